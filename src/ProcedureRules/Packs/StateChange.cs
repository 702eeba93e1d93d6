namespace ProcedureRules.Packs;

/// <summary>What an operation does to one aspect of its part.</summary>
/// <param name="Aspect">The aspect.</param>
/// <param name="From">The states it starts from.</param>
/// <param name="To">The state it ends in; -1 for "the state that the undone step found" (written <c>before</c>).</param>
public sealed record StateChange(Aspect Aspect, StateSet From, int To);
