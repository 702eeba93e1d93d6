using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Linting;

/// <summary>What a check of the lint found.</summary>
/// <param name="Of">The name of the declaration it is about, where it may be accepted.</param>
/// <param name="Says">What it says.</param>
internal sealed record LintFinding(SourceSpan Of, Diagnostic Says);
