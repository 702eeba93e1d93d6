using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Expectations;

/// <summary>Something with these words is in the plan, or is not: a caution, check, wait, hold, tool, stop, way and the like.</summary>
internal sealed record WordsExpected(SourceSpan Span, string Text, string Keyword, string Words, StepPick? At, string? Is, bool IsDue) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var said = PlanWords.Of(outcome.Plan, Keyword).Where(text => text.Words.Contains(Words, StringComparison.OrdinalIgnoreCase)).ToList();
        var found = said.Where(text => (At is null || (text.Step is not null && At.Is(text.Step))) && (Is is null || text.Is == Is)).ToList();
        if (!IsDue) return Judgement.Of(found.Count == 0, () => Say(found[0]), () => Explanation.Why(outcome, Words));
        return Judgement.Of(
            found.Count > 0,
            () => said.Count == 0 ? $"no {Keyword} has these words" : string.Join("; ", said.Select(Say).Distinct()),
            () => said.Count > 0 ? Explanation.Why(outcome, Words) : Keyword == "way" ? Ways(outcome) : Explanation.WhyNot(outcome, Words));
    }

    private static string Say(PlanWords text) =>
        $"{(text.Step is null ? "" : $"step {text.Step.Number}, {text.Step.Id}: ")}{text.Words}{(text.Is is null ? "" : $" ({text.Is.Replace('_', ' ')})")}";

    private IReadOnlyList<string> Ways(Outcome outcome)
    {
        var lines = new List<string>();
        foreach (var choice in outcome.Plan.Choices.Where(choice => choice.Ways.Any(way => way.Text.ToString().Contains(Words, StringComparison.OrdinalIgnoreCase))))
        {
            lines.Add($"{choice.Text}: {choice.Ways[choice.Taken].Text}");
            lines.AddRange(choice.Ways.Where(way => way.WhyNot is not null).Select(way => $"  not: {way.Text} ({way.WhyNot})"));
        }

        return lines.Count > 0 ? lines : Explanation.WhyNot(outcome, Words);
    }
}
