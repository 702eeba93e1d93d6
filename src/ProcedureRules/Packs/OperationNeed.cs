namespace ProcedureRules.Packs;

/// <summary>A state condition that an operation needs from its start to its end.</summary>
/// <param name="Condition">The state condition, in which <c>it</c> is the part worked on and a kind's name means every part of that kind.</param>
/// <param name="Way">Whether it holds for the step, the step that undoes it, or both.</param>
public sealed record OperationNeed(Snippet Condition, Way Way);
