using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>
/// All that is stated of one vehicle and the jobs on it: its parts, relations, observations, the state of each aspect now. Immutable; a
/// session replaces it as statements come and go.
/// </summary>
public sealed record Situation
{
    /// <summary>The vehicle's title.</summary>
    public required string Title { get; init; }

    /// <summary>The packs' names.</summary>
    public required Vocabulary Vocabulary { get; init; }

    /// <summary>
    /// Every part that is stated, and one for each kind whose silence means unknown (named as the kind); in the order of the sheet. The
    /// vehicle itself is among them.
    /// </summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>Statements on parts; of an archetype, the sheet and the work order the last one that speaks of a part counts.</summary>
    public IReadOnlyList<PartStatement> PartStatements { get; init; } = [];

    /// <summary>Statements on relations, and one with an unknown for each pair whose silence means unknown.</summary>
    public IReadOnlyList<RelationStatement> Relations { get; init; } = [];

    /// <summary>Observations of facts.</summary>
    public IReadOnlyList<Observation> Observations { get; init; } = [];

    /// <summary>Readings outside what occurs, which are asked back and not reckoned with.</summary>
    public IReadOnlyList<Doubt> Doubts { get; init; } = [];

    /// <summary>States now, where they differ from the normal state.</summary>
    public IReadOnlyDictionary<StateVariable, int> States { get; init; } = new Dictionary<StateVariable, int>();

    /// <summary>The jobs asked for.</summary>
    public IReadOnlyList<JobRequest> Jobs { get; init; } = [];

    /// <summary>The ways that the technician has fixed; of one choice the last counts.</summary>
    public IReadOnlyList<FixedWay> Ways { get; init; } = [];

    /// <summary>Work recorded as done, in its order.</summary>
    public IReadOnlyList<DoneWork> Done { get; init; } = [];

    /// <summary>The state of an aspect now.</summary>
    public int StateNow(Part part, Aspect aspect) => StateNow(new StateVariable(part, aspect));

    /// <summary>The state of an aspect of a part now.</summary>
    public int StateNow(StateVariable variable) => States.TryGetValue(variable, out var state) ? state : variable.Aspect.Normal;
}
