using ProcedureRules.Facts;

namespace ProcedureRules.Beliefs;

/// <summary>Two or more statements of equal rank that contradict each other; the fact is read as the hull of them.</summary>
/// <param name="Key">The fact.</param>
/// <param name="Values">What is said, in words.</param>
public sealed record Conflict(FactKey Key, IReadOnlyList<Value> Values);
