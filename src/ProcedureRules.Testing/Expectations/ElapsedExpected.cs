using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Testing.Expectations;

/// <summary>From the start of the job to its end lies within bounds, nights included: all of it, or one estimate.</summary>
internal sealed record ElapsedExpected(SourceSpan Span, string Text, Quantity Due, ScheduleCase? Only, Workday Day) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var schedule = outcome.In(Day);
        var elapsed = schedule.Elapsed;
        var chain = schedule.CriticalChain;
        return new TimeSpread(elapsed.Low.TotalSeconds, elapsed.Likely.TotalSeconds, elapsed.High.TotalSeconds).Judge(
            Due, Only, $" in {outcome.Plan.Steps.Count} steps, {schedule.Shop.Technicians} at work",
            () => chain.Count == 0 ? [] : [$"what is late here is late at the end: {string.Join(", ", chain.Select(link => link.StepId))}"]);
    }
}
