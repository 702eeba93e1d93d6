using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Expectations;

/// <summary>One thing that a plan must hold, or must not.</summary>
/// <param name="Span">Where it is written.</param>
/// <param name="Text">As it is written.</param>
internal abstract record Expectation(SourceSpan Span, string Text)
{
    /// <summary>Compares it with what came.</summary>
    public abstract Judgement Judge(Outcome outcome);
}
