using ProcedureRules.Diagnostics;

namespace ProcedureRules.Language;

/// <summary>One way of a <c>one_of</c>.</summary>
/// <param name="Text">The words a technician reads.</param>
/// <param name="Rank">Lower comes first.</param>
/// <param name="If">The condition under which it is open; null: always.</param>
/// <param name="Then">What it concludes when chosen.</param>
/// <param name="Span">Where it is written.</param>
public sealed record Option(Template Text, int Rank, Test? If, IReadOnlyList<Conclusion> Then, SourceSpan Span);
