using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>What bolts bear, to judge whether a torque that somebody has stated is plausible.</summary>
internal static class FastenerFunctions
{
    private const string Metric = "metric";
    private const string Standards = "SAE J429; ISO 898-1; ISO 3506-1";

    private static readonly FunctionParameter Grade = new("grade", [.. BoltGrades.All.Select(grade => grade.Name)]);
    private static readonly FunctionParameter Diameter = new("diameter", Dimension.Length);
    private static readonly FunctionParameter Pitch = new("pitch", Dimension.Length);

    public static IReadOnlyList<FunctionDefinition> All { get; } =
    [
        new()
        {
            Name = "stress_area",
            Parameters = [new("thread", ["inch", Metric]), Diameter, Pitch],
            Returns = Dimension.Area,
            Documentation = "the area on which a bolt bears its pull; the pitch is the way from thread to thread",
            Basis = "ASME B1.1 (inch); ISO 898-1 (metric)",
            Implementation = given => Fastening.StressArea(given.Word("thread") == Metric, given["diameter"], given["pitch"]),
        },
        new()
        {
            Name = "proof_stress",
            Parameters = [Grade, Diameter],
            Returns = Dimension.PressureDifference,
            Documentation = "the stress that a bolt of a grade bears without staying longer",
            Basis = Standards,
            Implementation = given => BoltGrades.Find(given.Word("grade"))!.ProofStress(given["diameter"]),
        },
        new()
        {
            Name = "proof_load",
            Parameters = [Grade, Diameter, Pitch],
            Returns = Dimension.Force,
            Documentation = "the pull that a bolt bears without staying longer",
            Basis = Standards,
            Implementation = given => Fastening.ProofLoad(BoltGrades.Find(given.Word("grade"))!, given["diameter"], given["pitch"]),
        },
        new()
        {
            Name = "nut_factor",
            Parameters = [new("surface", NutFactors.Surfaces)],
            Returns = Dimension.Number,
            Documentation = "the K of torque = K x diameter x pull for a surface; a range, because surfaces differ",
            Basis = "published ranges of nut factors",
            Implementation = given => NutFactors.Find(given.Word("surface"))!.Value,
        },
        new()
        {
            Name = "chart_torque",
            Parameters = [Grade, Diameter, Pitch, new("nut_factor", Dimension.Number)],
            Returns = Dimension.Torque,
            Documentation = "the torque of a general chart, which pulls a bolt to three quarters of its proof load: a measure for stated figures, not a figure of any joint",
            Basis = Standards + "; torque = K x diameter x pull",
            Implementation = given => Fastening.ChartTorque(BoltGrades.Find(given.Word("grade"))!, given["diameter"], given["pitch"], given["nut_factor"]),
        },
    ];
}
