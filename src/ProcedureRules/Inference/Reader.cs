namespace ProcedureRules.Inference;

/// <summary>A condition of a rule that reads a predicate, with the order in which the others are joined to it.</summary>
/// <param name="Plan">The rule.</param>
/// <param name="Pattern">The index of the condition.</param>
/// <param name="Steps">The other conditions, each reached through what is bound before it where that is possible.</param>
internal sealed record Reader(RulePlan Plan, int Pattern, JoinStep[] Steps);
