using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Expectations;

/// <summary>The labour of the plan lies within bounds.</summary>
internal sealed record LabourExpected(SourceSpan Span, string Text, Quantity Due) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var came = outcome.Plan.Labour;
        return Judgement.Of(Due.Low <= came.Low && came.High <= Due.High, () => $"{came.ToDisplay(UnitSystem.Us)} in {outcome.Plan.Steps.Count} steps");
    }
}
