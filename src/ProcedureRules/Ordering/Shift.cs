using ProcedureRules.Packs;

namespace ProcedureRules.Ordering;

/// <summary>One change of a step: the states it starts from and the one it ends in; -1 for the one that the undone step found.</summary>
internal readonly record struct Shift(int Variable, StateSet From, int To);
