using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Expectations;

/// <summary>The plan leads to the end of the job, or says why it cannot go on.</summary>
internal sealed record EndExpected(SourceSpan Span, string Text, bool Stops) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var stops = outcome.Plan.Stops;
        return Judgement.Of(
            outcome.Plan.IsStopped == Stops,
            () => !outcome.Plan.IsStopped ? $"it goes on, with {outcome.Plan.Steps.Count} steps" : string.Join("; ", stops.Select(stop => stop.Text)),
            () => [.. stops.Select(stop => $"{stop.Reason.Text} [{stop.Reason.Rule}]")]);
    }
}
