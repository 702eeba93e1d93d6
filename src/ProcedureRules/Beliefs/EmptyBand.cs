using ProcedureRules.Facts;

namespace ProcedureRules.Beliefs;

/// <summary>Sure demands on a fact that no value satisfies: it does not go this way.</summary>
/// <param name="Key">The fact.</param>
/// <param name="Band">The demands; the low end of the least lies above the high end of the most.</param>
/// <param name="Demands">The effects that surely demand it, in the order of the records.</param>
public sealed record EmptyBand(FactKey Key, DemandBand Band, IReadOnlyList<RecordEffect> Demands);
