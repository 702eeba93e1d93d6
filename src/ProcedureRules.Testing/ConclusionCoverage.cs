using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What a conclusion of a rule came to over all cases.</summary>
/// <param name="Text">Its first line, as it is written.</param>
/// <param name="Span">Where it is written.</param>
/// <param name="Used">In how many cases it stood, surely or possibly, under the ways that the plan takes.</param>
public sealed record ConclusionCoverage(string Text, SourceSpan Span, int Used);
