using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Expectations;

/// <summary>Readings speak of a cause, or do not.</summary>
internal sealed record FindingExpected(SourceSpan Span, string Text, string Cause, string Part, string? Is, bool IsDue) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var found = outcome.Plan.Findings.FirstOrDefault(finding => finding.Cause.Name == Cause && finding.Part.Name == Part);
        if (!IsDue) return Judgement.Of(found is null, () => Say(found!), () => Reasons(found!));
        if (found is null) return Judgement.Of(false, () => "nothing speaks of it", () => WhyNot(outcome));
        return Judgement.Of(Is is null || Word(found.Verdict) == Is, () => Say(found), () => Reasons(found));
    }

    private IReadOnlyList<string> WhyNot(Outcome outcome) =>
        outcome.Plan.Situation.Vocabulary.Causes.TryGetValue(Cause, out var cause) ? Explanation.WhyNot(outcome, cause.Text.Text) : [];

    private static string Say(PlanFinding finding) => $"{finding.Text}: {Word(finding.Verdict).Replace('_', ' ')}";

    private static IReadOnlyList<string> Reasons(PlanFinding finding) =>
    [
        .. finding.For.Select(reason => $"for: {reason.Text} [{reason.Rule}]"),
        .. finding.Against.Select(reason => $"against: {reason.Text} [{reason.Rule}]"),
    ];

    private static string Word(Truth truth) => truth switch { Truth.Yes => "sure", Truth.No => "ruled_out", _ => "possible" };
}
