using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>The share of a torque that a bolt's surface decides on: the K of torque = K x diameter x pull.</summary>
/// <remarks>Ranges as a published table of nut factors gives them; they are wide because surfaces are, and so is what a wrench makes of a torque.</remarks>
public static class NutFactors
{
    private static readonly (string Surface, Quantity Factor)[] Rows =
    [
        ("dry_steel", Range(0.18, 0.27)),
        ("oiled", Range(0.10, 0.26)),
        ("cadmium", Range(0.15, 0.19)),
        ("phosphate_oiled", Range(0.15, 0.22)),
        ("zinc", Range(0.17, 0.35)),
        ("stainless", Range(0.30, 0.50)),
    ];

    /// <summary>The surfaces, as packs say them.</summary>
    public static IReadOnlyList<string> Surfaces { get; } = [.. Rows.Select(row => row.Surface)];

    /// <summary>The factor of a surface; null where the table does not have it.</summary>
    public static Quantity? Find(string surface)
    {
        foreach (var (name, factor) in Rows)
            if (name == surface) return factor;
        return null;
    }

    private static Quantity Range(double low, double high) => Quantity.Between(low, high, Dimension.Number);
}
