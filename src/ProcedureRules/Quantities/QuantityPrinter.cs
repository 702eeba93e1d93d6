using System.Globalization;
using ProcedureRules.Logic;

namespace ProcedureRules.Quantities;

/// <summary>Writes quantities: exactly, so that they can be read back, and for display.</summary>
internal static class QuantityPrinter
{
    public static string Exact(Quantity value, UnitSystem system)
    {
        if (value.IsPoint)
        {
            var (figure, unit) = ShortestWithUnit(value.Low, UnitChoice.For(value, system), value.Dimension);
            return WithUnit(figure, unit);
        }

        var (lowUnit, highUnit) = UnitChoice.ForEnds(value, system);
        var (low, high) = (ShortestWithUnit(value.Low, lowUnit, value.Dimension), ShortestWithUnit(value.High, highUnit, value.Dimension));
        return Joined(low, high);
    }

    public static string Display(Quantity value, UnitSystem system, bool isWorkedOut = false)
    {
        if (DurationDisplay.Of(value) is { } duration) return duration;
        var unit = UnitChoice.For(value, system);
        if (!value.IsBounded) return Open(value, unit);
        var (lowUnit, highUnit) = UnitChoice.ForEnds(value, system);

        // What is one figure but for the last bits of a sum is shown as one figure.
        if (Quantity.EqualTo(value, value) == Truth.Yes) return WithUnit(DisplayFigure.Nearest(value.Low, unit), unit);
        var finest = isWorkedOut && value.Dimension == Dimension.Length ? DisplayFigure.Finest(value.High - value.Low, lowUnit) : int.MinValue;
        return Joined((DisplayFigure.Down(value.Low, lowUnit, finest), lowUnit), (DisplayFigure.Up(value.High, highUnit, finest), highUnit));
    }

    private static string Open(Quantity value, Unit? unit)
    {
        // Below the air around, a lower pressure is a deeper vacuum.
        var (least, most) = unit?.IsDepth == true ? ("at most", "at least") : ("at least", "at most");
        if (double.IsFinite(value.Low)) return $"{least} {WithUnit(DisplayFigure.Down(value.Low, unit), unit)}";
        return double.IsFinite(value.High)
            ? $"{most} {WithUnit(DisplayFigure.Up(value.High, unit), unit)}"
            : $"any {Dimensions.Name(value.Dimension).Replace('_', ' ')}";
    }

    private static string Joined((string Figure, Unit? Unit) low, (string Figure, Unit? Unit) high)
    {
        if (low.Unit == high.Unit)
        {
            var isDepth = low.Unit?.IsDepth == true;
            return WithUnit(isDepth ? $"{high.Figure}..{low.Figure}" : $"{low.Figure}..{high.Figure}", low.Unit);
        }

        var prefix = low.Unit?.Prefix is { } word ? word + " " : "";
        return $"{prefix}{low.Figure} {low.Unit?.Symbol}..{high.Figure} {high.Unit?.Symbol}";
    }

    private static string WithUnit(string figure, Unit? unit) => unit is null ? figure
        : unit.Prefix is null ? $"{figure} {unit.Symbol}" : $"{unit.Prefix} {figure} {unit.Symbol}";

    // A figure beside an offset (a hair above absolute zero in degF) can need hundreds of digits; the base unit never does.
    private static (string Figure, Unit? Unit) ShortestWithUnit(double bound, Unit? unit, Dimension dimension)
    {
        if (!double.IsFinite(bound)) return (bound > 0 == (unit?.IsDepth != true) ? "inf" : "-inf", unit);
        if (Shortest.TryWrite(bound, unit, out var figure)) return (figure, unit);
        var plain = UnitTable.For(dimension).First(u => u.ExactFactor.Sign > 0 && u.ExactOffset.Sign == 0);
        return (Shortest.TryWrite(bound, plain, out figure) ? figure : bound.ToString("R", CultureInfo.InvariantCulture), plain);
    }
}
