using ProcedureRules.Packs;

namespace ProcedureRules.Ordering;

/// <summary>
/// Which steps and states could be reached if nothing that has been reached were ever lost. What cannot even so is out of reach, and says what
/// is missing.
/// </summary>
internal sealed class Reachability
{
    private readonly World _world;
    private readonly ulong[] _reached;
    private readonly HashSet<Work> _doable = [];

    public Reachability(World world)
    {
        _world = world;
        _reached = [.. world.Start.Select(state => 1UL << state)];
        for (var grows = true; grows;)
        {
            grows = false;
            foreach (var work in world.Works)
            {
                if (_doable.Contains(work) || !Missing(work).IsNothing) continue;
                _doable.Add(work);
                grows = true;
                foreach (var shift in work.Shifts) _reached[shift.Variable] |= shift.To >= 0 ? 1UL << shift.To : Found(work, shift.Variable);
            }
        }
    }

    /// <summary>
    /// The states missing for due steps (with their needs) and for the end: those that no step leads to, where there are such, since the
    /// others follow from them.
    /// </summary>
    public IReadOnlyList<(Work? Work, Guard Missing, Beliefs.RecordEffect? Source)> OutOfReach()
    {
        var all = All().ToList();
        var roots = all.FindAll(entry => !_world.Works.Any(work => work.Shifts.Any(shift => shift.Variable == entry.Missing.Variable
            && (shift.To >= 0 ? entry.Missing.States.Has(shift.To) : (Found(work, shift.Variable) & entry.Missing.States.Bits) != 0))));
        return roots.Count > 0 ? roots : all;
    }

    private IEnumerable<(Work? Work, Guard Missing, Beliefs.RecordEffect? Source)> All()
    {
        foreach (var work in _world.Works)
            if (work.IsDue && !_doable.Contains(work) && Missing(work) is { IsNothing: false } missing) yield return (work, missing.State, missing.Source);
        foreach (var end in _world.Ends)
            if (IsOut(end.State)) yield return (null, end.State, end.Source);
        foreach (var way in _world.Waypoints)
            foreach (var point in way)
                if (IsOut(point)) yield return (null, point, null);
    }

    private Lack Missing(Work work)
    {
        foreach (var shift in work.Shifts)
            if (IsOut(new Guard(shift.Variable, shift.From))) return new Lack(new Guard(shift.Variable, shift.From), null, false);
        foreach (var need in work.Needs)
            if (need.Guards.Count == 0 && IsOut(need.Wanted)) return new Lack(need.Wanted, need.Source, false);
        if (work is { IsOnlyUndoing: true, Undoes: { } undone } && !_doable.Contains(undone))
            return new Lack(new Guard(work.Shifts.Length > 0 ? work.Shifts[0].Variable : 0, new StateSet(0)), null, false);
        return new Lack(default, null, true);
    }

    private bool IsOut(Guard guard) => (guard.States.Bits & _reached[guard.Variable]) == 0;

    private static ulong Found(Work work, int variable) =>
        work.Undoes?.Shifts.Where(shift => shift.Variable == variable).Select(shift => shift.From.Bits).FirstOrDefault() ?? 0;

    private readonly record struct Lack(Guard State, Beliefs.RecordEffect? Source, bool IsNothing);
}
