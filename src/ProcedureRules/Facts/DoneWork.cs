using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>Work that was recorded as done since the sheet was read.</summary>
/// <param name="Operation">What was done.</param>
/// <param name="Part">The part it was done to.</param>
public sealed record DoneWork(Operation Operation, Part Part);
