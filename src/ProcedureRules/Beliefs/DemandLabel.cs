using ProcedureRules.Quantities;

namespace ProcedureRules.Beliefs;

/// <summary>What is demanded of a fact.</summary>
/// <param name="Demanded">The least value that satisfies every <c>at_least</c>.</param>
/// <param name="Allowed">The greatest value that every <c>at_most</c> allows.</param>
/// <param name="Band">The band that the demands leave.</param>
/// <param name="IsEmpty">Whether the sure demands leave nothing.</param>
/// <param name="Rank">How the demands rank.</param>
internal readonly record struct DemandLabel(Quantity Demanded, Quantity Allowed, DemandBand Band, bool IsEmpty, RankRange Rank);
