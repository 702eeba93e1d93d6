namespace ProcedureRules.Diagnostics;

/// <summary>A kind of diagnostic: its stable code and what the reference says about it.</summary>
/// <param name="Code">The stable code, such as <c>PR0101</c>.</param>
/// <param name="Title">What is wrong, in one line.</param>
/// <param name="Cure">What to do about it.</param>
/// <param name="Example">A small text that brings it about.</param>
public sealed record DiagnosticCode(string Code, string Title, string Cure, string Example)
{
    internal Diagnostic At(SourceSpan span, string message, Severity severity = Severity.Error) =>
        new(Code, severity, span, message);
}
