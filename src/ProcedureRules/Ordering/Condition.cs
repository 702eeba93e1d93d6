using ProcedureRules.Beliefs;

namespace ProcedureRules.Ordering;

/// <summary>A state that a step (or the end of the job) needs, when its guards hold.</summary>
/// <param name="Wanted">The state.</param>
/// <param name="Guards">The moments at which it binds.</param>
/// <param name="Source">The effect that says so.</param>
internal sealed record Condition(Guard Wanted, IReadOnlyList<Guard> Guards, RecordEffect Source)
{
    public bool Fails(int[] state) => !Wanted.Holds(state) && Guard.All(Guards, state);
}
