using ProcedureRules.Quantities;

namespace ProcedureRules.Refrigerants;

/// <summary>How a vacuum rises once the pump is shut off from it: air comes in steadily, water only until it fills the space with its vapour.</summary>
internal static class VacuumRise
{
    /// <summary>How far it rises in a stretch of time, at the pace of another stretch.</summary>
    public static Quantity Over(Quantity before, Quantity after, Quantity took, Quantity over) =>
        took.Low > 0 && over.Low >= 0 ? (after - before) * (over / took) : Quantity.Anything(Dimension.PressureDifference);

    /// <summary>The pace of a second stretch as a share of the pace of the first, for stretches of the same length.</summary>
    public static Quantity Slowing(Quantity first, Quantity middle, Quantity last)
    {
        var before = middle - first;
        return before.Low > 0 ? (last - middle) / before : Quantity.Anything(Dimension.Number);
    }
}
