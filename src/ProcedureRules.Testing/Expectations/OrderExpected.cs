using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Expectations;

/// <summary>All of one step come before all of another.</summary>
internal sealed record OrderExpected(SourceSpan Span, string Text, StepPick First, StepPick Second) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var (first, second) = (First.In(outcome.Plan), Second.In(outcome.Plan));
        foreach (var (pick, steps) in new[] { (First, first), (Second, second) })
            if (steps.Count == 0) return Judgement.Of(false, () => $"'{pick.Name}' is not in the plan", () => Explanation.WhyNot(outcome, pick.Step));
        return Judgement.Of(
            first[^1].Number < second[0].Number,
            () => $"step {first[^1].Number}: {first[^1].Text}, after step {second[0].Number}: {second[0].Text}",
            () => [.. Explanation.Why(outcome, second[0].Id), .. Explanation.Why(outcome, first[^1].Id)]);
    }
}
