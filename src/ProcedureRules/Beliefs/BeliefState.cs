namespace ProcedureRules.Beliefs;

/// <summary>How firmly every conclusion stands under one set of facts. Immutable.</summary>
public sealed class BeliefState
{
    internal BeliefState() { }
}
