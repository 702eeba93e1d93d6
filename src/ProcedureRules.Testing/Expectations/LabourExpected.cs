using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Testing.Expectations;

/// <summary>The labour of the plan lies within bounds: all of it, or one estimate.</summary>
internal sealed record LabourExpected(SourceSpan Span, string Text, Quantity Due, ScheduleCase? Only) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var plan = outcome.Plan;
        var likely = plan.Steps.Sum(step => LoadWriter.Labour(step, ScheduleCase.Likely));
        return new TimeSpread(plan.Labour.Low, likely, plan.Labour.High).Judge(Due, Only, $" in {plan.Steps.Count} steps");
    }
}
