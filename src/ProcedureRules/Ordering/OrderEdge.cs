using ProcedureRules.Beliefs;

namespace ProcedureRules.Ordering;

/// <summary>One step before another, where both occur; with guards, only where they hold when the second is done. Without a source: a check before what it settles.</summary>
internal sealed record OrderEdge(Work First, Work Second, IReadOnlyList<Guard> Guards, RecordEffect? Source);
