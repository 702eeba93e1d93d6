using ProcedureRules.Facts;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>Values in words.</summary>
public static class ValueText
{
    /// <summary>The value as a technician reads it.</summary>
    public static string Of(Value value, UnitSystem units)
    {
        if (value.Type.IsQuantity) return value.Quantity.ToDisplay(units);
        if (value.Type.IsText) return value.Text ?? "";
        var open = value.Type.Words.Where((_, i) => (value.Words >> i & 1) != 0).Select(word => word.Replace('_', ' '));
        return string.Join(" or ", open);
    }
}
