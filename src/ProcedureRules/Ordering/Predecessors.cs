using ProcedureRules.Choosing;

namespace ProcedureRules.Ordering;

/// <summary>
/// The steps that each step really has to come after: what made the states it starts from and needs, what it would have spoiled, what it
/// undoes, what an order asks for. Not merely the step before it.
/// </summary>
internal sealed class Predecessors
{
    private readonly World _world;
    private readonly IReadOnlyList<Occurrence> _occurrences;
    private readonly Together _together;
    private readonly Dictionary<int, int> _changers = [];
    private readonly List<(Guard Wanted, int By)> _readers = [];
    private readonly Dictionary<Work, Stack<int>> _undone = [];
    private readonly Dictionary<Work, List<int>> _done = [];

    private Predecessors(World world, IReadOnlyList<Occurrence> occurrences) =>
        (_world, _occurrences, _together) = (world, occurrences, new Together(occurrences.Select(occurrence => occurrence.Work.Step)));

    /// <summary>For each occurrence the indices of those it comes after, ascending.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Of(World world, IReadOnlyList<Occurrence> occurrences)
    {
        var predecessors = new Predecessors(world, occurrences);
        return [.. occurrences.Select(predecessors.Next)];
    }

    private IReadOnlyList<int> Next(Occurrence occurrence)
    {
        var after = new SortedSet<int>();
        var work = occurrence.Work;
        var reads = work.Shifts.Select(shift => new Guard(shift.Variable, shift.From))
            .Concat(work.Needs.Where(need => _together.Has(need.Source.Record) && Guard.All(need.Guards, occurrence.Before)).Select(need => need.Wanted))
            .Concat(_world.Keepings.Where(keeping => keeping.During.Holds(occurrence.After)
                && (!keeping.During.Holds(occurrence.Before) || !keeping.Kept.Holds(occurrence.Before))).Select(keeping => keeping.Kept))
            .ToList();
        foreach (var read in reads) AddChanger(after, read.Variable);
        foreach (var reader in _readers)
            if (reader.Wanted.Holds(occurrence.Before) && !reader.Wanted.Holds(occurrence.After)) after.Add(reader.By);
        foreach (var keeping in _world.Keepings)
            if (keeping.Kept.Holds(occurrence.Before) && !keeping.Kept.Holds(occurrence.After)) AddEnd(after, keeping.During, occurrence.Index);
        foreach (var edge in work.Before)
            if (Guard.All(edge.Guards, occurrence.Before) && _done.TryGetValue(edge.First, out var firsts)) after.UnionWith(firsts);
        if (work.Undoes is { } undone && _undone.TryGetValue(undone, out var open) && open.Count > 0) after.Add(open.Pop());

        Note(occurrence, reads);
        return [.. after];
    }

    private void AddChanger(SortedSet<int> after, int variable)
    {
        if (_changers.TryGetValue(variable, out var changer)) after.Add(changer);
    }

    // The step that ended a state, before which what it keeps may not go.
    private void AddEnd(SortedSet<int> after, Guard state, int before)
    {
        for (var i = before - 1; i >= 0; i--)
        {
            if (!state.Holds(_occurrences[i].Before) || state.Holds(_occurrences[i].After)) continue;
            after.Add(i);
            return;
        }
    }

    private void Note(Occurrence occurrence, List<Guard> reads)
    {
        var (index, work) = (occurrence.Index, occurrence.Work);
        foreach (var read in reads) _readers.Add((read, index));
        foreach (var shift in work.Shifts)
            if (occurrence.Before[shift.Variable] != occurrence.After[shift.Variable])
            {
                _changers[shift.Variable] = index;
                _readers.RemoveAll(reader => reader.Wanted.Variable == shift.Variable && !reader.Wanted.Holds(occurrence.After));
            }
        Under(_undone, work).Push(index);
        if (!_done.TryGetValue(work, out var list)) _done[work] = list = [];
        list.Add(index);
    }

    private static Stack<int> Under(Dictionary<Work, Stack<int>> stacks, Work work)
    {
        if (!stacks.TryGetValue(work, out var stack)) stacks[work] = stack = [];
        return stack;
    }
}
