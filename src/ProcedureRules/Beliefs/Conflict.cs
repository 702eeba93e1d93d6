using ProcedureRules.Facts;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>Two or more statements of equal rank that contradict each other; a fact is read as the hull of them, a relation or a part as not known.</summary>
/// <param name="About">The fact, relation or part.</param>
/// <param name="Values">What is said; of a relation or a part, no and yes.</param>
public sealed record Conflict(Reading About, IReadOnlyList<Value> Values);
