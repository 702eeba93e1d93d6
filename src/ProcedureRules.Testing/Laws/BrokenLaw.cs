using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Laws;

/// <summary>A law that a plan does not keep to.</summary>
/// <param name="Law">Its name.</param>
/// <param name="Span">Where it is written; none for a law of every pack.</param>
/// <param name="Text">What is wrong in the plan.</param>
public sealed record BrokenLaw(string Law, SourceSpan Span, string Text)
{
    /// <inheritdoc/>
    public override string ToString() => Span.File is null ? $"{Law}: {Text}" : $"{Span}: {Law}: {Text}";
}
