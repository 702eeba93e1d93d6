using ProcedureRules.Diagnostics;

namespace ProcedureRules.Facts;

/// <summary>One statement about a fact of a part.</summary>
/// <param name="Fact">The fact it is about.</param>
/// <param name="Value">What it says.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Note">Who or how, in the words of the sheet.</param>
/// <param name="Span">Where it is written.</param>
/// <param name="IsSure">Whether it is said to be right though it lies outside what occurs; without that it is doubted.</param>
public sealed record Observation(FactKey Fact, Value Value, Source Source, string? Note = null, SourceSpan Span = default, bool IsSure = false);
