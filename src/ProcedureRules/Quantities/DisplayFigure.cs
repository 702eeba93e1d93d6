using System.Numerics;

namespace ProcedureRules.Quantities;

/// <summary>Rounds figures for people: four figures, and never the whole part.</summary>
internal static class DisplayFigure
{
    private const int Figures = 4;
    private const int Clean = 12;

    public static string Nearest(double bound, Unit? unit) => Write(bound, unit, Shortest.Round);

    /// <summary>At or below the bound.</summary>
    public static string Down(double bound, Unit? unit, int finest = int.MinValue) => Write(bound, unit, unit?.IsDepth == true ? Ceiling : Shortest.Floor, finest);

    /// <summary>At or above the bound.</summary>
    public static string Up(double bound, Unit? unit, int finest = int.MinValue) => Write(bound, unit, unit?.IsDepth == true ? Shortest.Floor : Ceiling, finest);

    /// <summary>The power of ten of the finest figure that says anything where the ends of a range lie so far apart.</summary>
    public static int Finest(double width, Unit? unit)
    {
        var inUnit = width / Math.Abs(unit?.Factor ?? 1);
        return double.IsFinite(inUnit) && inUnit > 0 ? (int)Math.Floor(Math.Log10(inUnit)) - 1 : int.MinValue;
    }

    private static string Write(double bound, Unit? unit, Func<ExactNumber, BigInteger> round, int finest = int.MinValue)
    {
        var exact = unit is null ? ExactNumber.From(bound) : unit.FromBase(ExactNumber.From(bound));
        if (exact.Sign == 0) return "0";

        // What arithmetic left in the thirteenth figure must not push a bound of 12.7 mm out to 12.71 mm.
        var power = Shortest.PowerOfTen(exact);
        var clean = ExactNumber.Scaled(Shortest.Round(exact / ExactNumber.Scaled(1, power - Clean + 1)), power - Clean + 1);
        var exponent = Math.Min(0, Math.Max(power - Figures + 1, finest));
        return Shortest.Write(round(clean / ExactNumber.Scaled(1, exponent)), exponent);
    }

    private static BigInteger Ceiling(ExactNumber value) => -Shortest.Floor(-value);
}
