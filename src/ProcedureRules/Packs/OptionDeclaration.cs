using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>One way of a <c>one_of</c>, as written.</summary>
internal sealed record OptionDeclaration(Snippet Text, int Rank, Snippet? If, IReadOnlyList<ConclusionDeclaration> Then, SourceSpan Span);
