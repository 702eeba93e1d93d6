using ProcedureRules.Diagnostics;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Expectations;

/// <summary>A step is in the plan, or is not.</summary>
internal sealed record StepExpected(SourceSpan Span, string Text, StepPick Step, bool IsDue, bool? IsSure) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var found = Step.In(outcome.Plan);
        if (!IsDue) return Judgement.Of(found.Count == 0, () => Say(found[0]), () => Explanation.Why(outcome, found[0].Id));
        if (found.Count == 0) return Judgement.Of(false, () => $"no such step among {outcome.Plan.Steps.Count}", () => Explanation.WhyNot(outcome, Step.Step));
        return Judgement.Of(
            IsSure is null || found.Any(step => step.Provisional.Count == 0 == IsSure),
            () => $"{Say(found[0])}, {(IsSure == true ? $"only if a check says so: {string.Join("; ", found[0].Provisional)}" : "and it is sure")}",
            () => Explanation.Why(outcome, found[0].Id));
    }

    private static string Say(PlanStep step) => $"step {step.Number}: {step.Text}";
}
