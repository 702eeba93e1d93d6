namespace ProcedureRules.Quantities;

/// <summary>Which unit a quantity is printed in: the table's for its magnitude and the system asked for.</summary>
internal static class UnitChoice
{
    private const double Inch = 0.0254;

    private static readonly Dictionary<(Dimension, UnitSystem), (Unit Unit, double From)[]> Ladders = Build();

    /// <summary>The unit for a quantity by its greater finite bound; null for numbers and counts, which have none.</summary>
    public static Unit? For(Quantity value, UnitSystem system)
    {
        var (low, high) = (Magnitude(value.Low), Magnitude(value.High));
        return Pick(value.Dimension, system, Math.Max(low, high), isBelowZero: value.High <= 0 && value.Low < 0);
    }

    /// <summary>The units for the two bounds. They differ only for durations and absolute pressures: nobody reads 0.3333 h as twenty minutes, or 0.0097 psia as 500 micron.</summary>
    public static (Unit? Low, Unit? High) ForEnds(Quantity value, UnitSystem system)
    {
        var unit = For(value, system);
        if (value.Dimension is not (Dimension.Duration or Dimension.AbsolutePressure) || !value.IsBounded || value.Low <= 0) return (unit, unit);
        return (Pick(value.Dimension, system, value.Low, isBelowZero: false), unit);
    }

    private static Unit? Pick(Dimension dimension, UnitSystem system, double magnitude, bool isBelowZero)
    {
        Unit? chosen = null;
        // No length at all is told in the unit of a rule, not of a feeler gauge: 0 in.
        if (magnitude == 0 && dimension == Dimension.Length) magnitude = Inch;
        if (!Ladders.TryGetValue((dimension, system), out var ladder)) return null;
        foreach (var (unit, from) in ladder)
        {
            if (unit.IsDepth && !isBelowZero) continue;
            if (chosen is null || (magnitude >= from && !chosen.IsDepth)) chosen = unit;
        }

        return chosen;
    }

    private static double Magnitude(double bound) => double.IsFinite(bound) ? Math.Abs(bound) : 0;

    private static Dictionary<(Dimension, UnitSystem), (Unit Unit, double From)[]> Build()
    {
        var ladders = new Dictionary<(Dimension, UnitSystem), (Unit, double)[]>();
        foreach (var group in UnitTable.All.GroupBy(u => u.Dimension))
        {
            var us = group.Where(u => u.UsFrom is not null).Select(u => (Unit: u, From: u.UsFrom!.Value)).OrderBy(e => e.From).ToArray();
            var si = group.Where(u => u.SiFrom is not null).Select(u => (Unit: u, From: u.SiFrom!.Value)).OrderBy(e => e.From).ToArray();
            if (us.Length > 0) ladders[(group.Key, UnitSystem.Us)] = us;
            if (si.Length > 0) ladders[(group.Key, UnitSystem.Si)] = si;
        }

        return ladders;
    }
}
