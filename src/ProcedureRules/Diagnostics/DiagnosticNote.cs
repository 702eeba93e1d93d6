namespace ProcedureRules.Diagnostics;

/// <summary>A remark below a diagnostic, often pointing at the other place that takes part in the mistake.</summary>
/// <param name="Span">The other place, or <see cref="SourceSpan.None"/>.</param>
/// <param name="Text">What to know; with a place it reads as a label, such as <c>declared here</c>.</param>
public sealed record DiagnosticNote(SourceSpan Span, string Text);
