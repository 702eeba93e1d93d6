using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Ordering;

/// <summary>What has to be put in order: variables and their states, steps with their needs, and what must hold at the end.</summary>
internal sealed class World
{
    private List<(Work, Shift)>[]? _changers;
    private List<Work>[]? _readers;

    public required BeliefState Beliefs { get; init; }

    /// <summary>The aspects that steps, needs and ends speak of.</summary>
    public required IReadOnlyList<StateVariable> Variables { get; init; }
    public required int[] Start { get; init; }

    /// <summary>Every step that may occur, by name.</summary>
    public required IReadOnlyList<Work> Works { get; init; }
    public required IReadOnlyDictionary<Step, Work> ByStep { get; init; }
    public required IReadOnlyList<OrderEdge> Edges { get; init; }
    public required IReadOnlyList<Keeping> Keepings { get; init; }

    /// <summary>States that may not occur, with the moments at which that binds.</summary>
    public required IReadOnlyList<(Guard State, IReadOnlyList<Guard> Guards)> Forbidden { get; init; }

    /// <summary>What must hold at the end.</summary>
    public required IReadOnlyList<EndState> Ends { get; init; }

    /// <summary>States to pass in order, one list a job.</summary>
    public required IReadOnlyList<IReadOnlyList<Guard>> Waypoints { get; init; }

    public required IReadOnlyDictionary<StateVariable, int> Indices { get; init; }

    /// <summary>The steps that change a variable, with the change.</summary>
    public IReadOnlyList<(Work Work, Shift Shift)> ChangersOf(int variable) => (_changers ??= Changers())[variable];

    /// <summary>The steps that find a variable in some state or need it so.</summary>
    public IReadOnlyList<Work> ReadersOf(int variable) => (_readers ??= Readers())[variable];

    /// <summary>The state of an aspect at a moment; what no step speaks of stays as it is now.</summary>
    public int StateOf(Part part, Aspect aspect, int[] state) => Indices.TryGetValue(new StateVariable(part, aspect), out var index)
        ? state[index]
        : Beliefs.Network.Result.Situation.StateNow(part, aspect);

    /// <summary>A guard in words.</summary>
    public string Say(Guard guard)
    {
        var (part, aspect) = Variables[guard.Variable];
        return new Inference.GroundState(part, aspect, guard.States).ToString();
    }

    private List<(Work, Shift)>[] Changers()
    {
        var changers = new List<(Work, Shift)>[Variables.Count];
        for (var variable = 0; variable < changers.Length; variable++) changers[variable] = [];
        foreach (var work in Works)
            foreach (var shift in work.Shifts) changers[shift.Variable].Add((work, shift));
        return changers;
    }

    private List<Work>[] Readers()
    {
        var readers = new List<Work>[Variables.Count];
        for (var variable = 0; variable < readers.Length; variable++) readers[variable] = [];
        foreach (var work in Works)
            foreach (var variable in work.Shifts.Select(shift => shift.Variable).Concat(work.Needs.Select(need => need.Wanted.Variable)).Distinct())
                readers[variable].Add(work);
        return readers;
    }
}
