using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Expectations;

/// <summary>Something is asked for, or is not.</summary>
internal sealed record QuestionExpected(SourceSpan Span, string Text, string Id, StepPick? At, bool IsDue) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var plan = outcome.Plan;
        var asked = plan.Questions.FirstOrDefault(question => question.Id == Id);
        if (!IsDue) return Judgement.Of(asked is null, () => $"asked: {asked!.Text}", () => [.. asked!.Matters.Select(matters => $"it decides: {matters}")]);
        if (asked is null) return Judgement.Of(false, () => $"not among the {plan.Questions.Count} questions", () => Explanation.Why(outcome, Id));
        var step = plan.Steps.FirstOrDefault(step => step.Id == asked.AtStep);
        return Judgement.Of(At is null || (step is not null && At.Is(step)), () => step is null ? "asked before the work" : $"found out at step {step.Number}, {step.Id}");
    }
}
