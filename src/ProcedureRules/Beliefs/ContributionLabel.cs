using ProcedureRules.Facts;

namespace ProcedureRules.Beliefs;

/// <summary>What an effect contributes to a fact, a demand or a relation.</summary>
/// <param name="Required">How firmly, on the required layer.</param>
/// <param name="Available">How firmly, on the available layer.</param>
/// <param name="Value">The value; means nothing where it is not available.</param>
/// <param name="Rank">How it ranks.</param>
/// <param name="IsSettled">Whether the value rests on nothing that is open, so that it stays as it is.</param>
internal readonly record struct ContributionLabel(
    Assurance Required, Assurance Available, Value Value, RankRange Rank, bool IsSettled);
