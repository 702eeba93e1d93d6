using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>A step that two plans have, told or timed otherwise, or behind a check in only one of them.</summary>
/// <param name="Before">The step before.</param>
/// <param name="After">The step after.</param>
public sealed record ChangedStep(PlanStep Before, PlanStep After)
{
    internal static bool IsChanged(PlanStep before, PlanStep after) =>
        before.Time != after.Time || before.Provisional.Count > 0 != after.Provisional.Count > 0 || before.Text.ToString() != after.Text.ToString();
}
