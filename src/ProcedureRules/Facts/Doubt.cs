using ProcedureRules.Diagnostics;

namespace ProcedureRules.Facts;

/// <summary>A reading that lies outside what occurs and was not said to be sure: it is asked back, and until then counts as not stated.</summary>
/// <param name="Fact">The fact it is about.</param>
/// <param name="Value">What was stated.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Likely">The same figure in a unit in which it would fit, or null.</param>
/// <param name="Note">Who or how, in the words of the sheet.</param>
/// <param name="Span">Where it is written.</param>
public sealed record Doubt(FactKey Fact, Value Value, Source Source, string? Likely = null, string? Note = null, SourceSpan Span = default);
