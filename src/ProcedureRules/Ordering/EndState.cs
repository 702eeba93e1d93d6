using ProcedureRules.Beliefs;

namespace ProcedureRules.Ordering;

/// <summary>A state that must hold at the end: because a job says so (then with the effect), or because it is the normal one.</summary>
internal readonly record struct EndState(Guard State, RecordEffect? Source);
