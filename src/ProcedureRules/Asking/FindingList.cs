using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>
/// What the findings say of causes, with their reasons: what is sure first, then the rivals that something speaks for, last what is ruled out.
/// </summary>
internal static class FindingList
{
    public static IReadOnlyList<PlanFinding> Of(BeliefState beliefs, Reasons reasons) =>
    [
        .. Verdict.Under(beliefs).OrderBy(Standing).Select(verdict => new PlanFinding(
            verdict.Cause, verdict.Part, Text(beliefs, verdict.Cause, verdict.Part), verdict.Truth,
            [.. verdict.For.Select(reasons.Of)],
            [.. verdict.Against.Select(reasons.Of)])),
    ];

    /// <summary>The sentence of a cause.</summary>
    public static Wording Text(BeliefState beliefs, Cause cause, Part part) =>
        beliefs.Network.Result.Rules.Causes.TryGetValue(cause, out var text) ? new(text, beliefs, new([part])) : new(Words.Name(cause.Name));

    private static int Standing(Verdict verdict) => verdict.Truth switch
    {
        Truth.Yes => 0,
        Truth.No => 3,
        _ => verdict.For.Count > 0 ? 1 : 2,
    };
}
