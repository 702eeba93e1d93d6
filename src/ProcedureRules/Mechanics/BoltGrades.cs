using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>The strength grades of bolts that published standards give, with their proof stress.</summary>
/// <remarks>
/// SAE J429 (grades 1, 2, 5, 8), ISO 898-1 (classes 4.6, 8.8, 10.9, 12.9). ISO 3506-1 gives stainless bolts no proof stress; in its place
/// stands the 0.2 % proof strength of A2-70, from memory.
/// </remarks>
public static class BoltGrades
{
    /// <summary>All of them, the softest of a standard first.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } =
    [
        Inch("grade_1", "1", (1.5, 33_000)),
        Inch("grade_2", "2", (0.75, 55_000), (1.5, 33_000)),
        Inch("grade_5", "5", (1, 85_000), (1.5, 74_000)),
        Inch("grade_8", "8", (1.5, 120_000)),
        Metric("class_4_6", "4.6", "ISO 898-1", (39, 225)),
        Metric("class_8_8", "8.8", "ISO 898-1", (16, 580), (39, 600)),
        Metric("class_10_9", "10.9", "ISO 898-1", (39, 830)),
        Metric("class_12_9", "12.9", "ISO 898-1", (39, 970)),
        Metric("stainless_a2_70", "A2-70", BoltGrade.StainlessStandard, (24, 450)),
    ];

    /// <summary>Finds a grade by its name or by its mark.</summary>
    /// <returns>The grade, or null.</returns>
    public static BoltGrade? Find(string text) =>
        All.FirstOrDefault(grade => text.Equals(grade.Name, StringComparison.OrdinalIgnoreCase) || text.Equals(grade.Mark, StringComparison.OrdinalIgnoreCase));

    private static BoltGrade Inch(string name, string mark, params (double Inches, double Psi)[] ranges) =>
        new(name, mark, "SAE J429", isMetric: false, [.. ranges.Select(range => (Quantity.Of(range.Inches, "in"), Quantity.Of(range.Psi, "dP psi")))]);

    private static BoltGrade Metric(string name, string mark, string standard, params (double Millimetres, double Megapascals)[] ranges) =>
        new(name, mark, standard, isMetric: true, [.. ranges.Select(range => (Quantity.Of(range.Millimetres, "mm"), Quantity.Of(range.Megapascals * 1000, "dP kPa")))]);
}
