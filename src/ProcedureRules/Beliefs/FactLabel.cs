using ProcedureRules.Facts;

namespace ProcedureRules.Beliefs;

/// <summary>What is held of a fact, merged from all statements and rules.</summary>
internal readonly record struct FactLabel(Value Value, RankRange Rank, bool IsConflict);
