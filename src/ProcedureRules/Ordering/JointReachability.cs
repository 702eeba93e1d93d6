using System.Collections;
using System.Numerics;
using System.Runtime.InteropServices;
using ProcedureRules.Beliefs;

namespace ProcedureRules.Ordering;

/// <summary>
/// Which two things can ever hold together, in whatever order the steps are done: states, and that a step has been done or not. A step that needs
/// two that cannot has no turn in any order: that is proved here, where a search could only give up.
/// </summary>
/// <remarks>
/// The mutual exclusions of classical planning for pairs (Haslum and Geffner, "Admissible heuristics for optimal planning", 2000: h2). What it
/// leaves possible may still be impossible; what it excludes is.
/// </remarks>
internal sealed class JointReachability
{
    private readonly World _world;

    // Where the things of each variable start: its states; for a step, that it is still to be done and that it is done.
    private readonly int[] _first;

    // For each thing those that can hold with it, itself among them where it can hold at all, and those that the laws of the packs keep apart from it.
    private readonly BitArray[] _together;
    private readonly BitArray[] _apart;

    /// <summary>Finds what can hold together.</summary>
    public JointReachability(World world)
    {
        _world = world;
        _first = new int[world.Variables.Count + world.Works.Count + 1];
        for (var i = 0; i < world.Variables.Count; i++) _first[i + 1] = _first[i] + world.Variables[i].Aspect.States.Count;
        for (var i = world.Variables.Count; i < _first.Length - 1; i++) _first[i + 1] = _first[i] + 2;
        _together = [.. Enumerable.Range(0, _first[^1]).Select(_ => None())];
        _apart = [.. Enumerable.Range(0, _first[^1]).Select(_ => None())];
        KeepApart();
        var start = None();
        for (var i = 0; i < world.Start.Length; i++) start[_first[i] + world.Start[i]] = true;
        foreach (var work in world.Works) start[Done(work) - 1] = true;
        foreach (var thing in Each(start)) _together[thing].Or(start);
        var turns = world.Works.Select(TurnOf).ToList();
        while (turns.Aggregate(false, (grows, turn) => Take(turn) || grows))
        {
        }
    }

    /// <summary>Whether no order leads to the end: a step has no turn, or two things that the end wants cannot both be so.</summary>
    public bool IsOutOfReach() => BesideAll([
        .. _world.Works.Where(work => work.IsDue).Select(work => Of(Done(work))),
        .. _world.Ends.Select(end => Of(end.State)),
    ]) is null;

    private BitArray None() => new(_first[^1]);

    private static IEnumerable<int> Each(BitArray things)
    {
        // By bytes, most of which are empty; what lies beyond the end of the last may be set.
        for (var at = 0; 8 * at < things.Length; at++)
            for (var left = CollectionsMarshal.AsBytes(things)[at]; left != 0; left &= (byte)(left - 1))
                if (8 * at + BitOperations.TrailingZeroCount(left) is var thing && thing < things.Length) yield return thing;
    }

    private int Done(Work work) => _first[_world.Variables.Count + work.Index] + 1;

    private BitArray Of(int thing)
    {
        var things = None();
        things[thing] = true;
        return things;
    }

    private BitArray Of(Guard guard)
    {
        var things = None();
        for (var i = _first[guard.Variable]; i < _first[guard.Variable + 1]; i++) things[i] = guard.States.Has(i - _first[guard.Variable]);
        return things;
    }

    private BitArray OfAll(IEnumerable<int> variables)
    {
        var things = None();
        foreach (var variable in variables)
            for (var i = _first[variable]; i < _first[variable + 1]; i++) things[i] = true;
        return things;
    }

    // A law that is broken at the start may stay so; one that is kept then is kept at every moment.
    private void KeepApart()
    {
        foreach (var keeping in _world.Keepings)
            if (!keeping.Fails(_world.Start))
                KeepApart(keeping.During, keeping.Kept with { States = keeping.Kept.States.Complement(_world.Variables[keeping.Kept.Variable].Aspect) });
        foreach (var (state, guards) in _world.Forbidden)
            if (guards.Count <= 1 && !(state.Holds(_world.Start) && Guard.All(guards, _world.Start)))
                KeepApart(state, guards.Count == 0 ? state : guards[0]);
    }

    private void KeepApart(Guard one, Guard other)
    {
        foreach (var thing in Each(Of(one))) _apart[thing].Or(Of(other));
        foreach (var thing in Each(Of(other))) _apart[thing].Or(Of(one));
    }

    private Turn TurnOf(Work work)
    {
        var needed = work.Shifts.Select(shift => Of(new Guard(shift.Variable, shift.From)))
            .Concat(work.Needs.Where(need => need.Guards.Count == 0).Select(need => Of(need.Wanted)))
            .Concat(work.Before.Where(Binds).Select(edge => Of(Done(edge.First))));
        if (work is { IsOnlyUndoing: true, Undoes: { } undone }) needed = needed.Append(Of(Done(undone)));
        int[] variables = [.. work.Shifts.Select(shift => shift.Variable), _world.Variables.Count + work.Index];
        return new Turn([.. needed], OfAll(variables).Not(), [.. work.Shifts.Select(shift => shift.To >= 0 ? Of(_first[shift.Variable] + shift.To) : Found(work, shift.Variable)), Of(Done(work))]);
    }

    // Whether the first of an edge has to have been done, whatever the moment is and whichever ways are still to be chosen.
    private bool Binds(OrderEdge edge) => edge.Guards.Count == 0 && edge.First is { IsDue: true, Undoes: null }
        && (edge.Source is not { } source || _world.Beliefs.Required(source.Record, source.Index) >= Assurance.Provisional);

    // What goes back to what was found may go back to whatever its step could find.
    private BitArray Found(Work work, int variable) =>
        work.Undoes?.Shifts.Where(shift => shift.Variable == variable).Aggregate(None(), (found, shift) => found.Or(Of(new Guard(variable, shift.From)))) ?? None();

    // Whether more can hold together once the step is done.
    private bool Take(Turn turn)
    {
        if (BesideAll(turn.Needed) is not { } beside) return false;
        beside.And(turn.Left);
        var grows = false;
        for (var i = 0; i < turn.Changed.Count; i++)
            foreach (var changed in Each(turn.Changed[i]))
            {
                grows |= Join(changed, beside) | Join(changed, Of(changed));
                for (var j = i + 1; j < turn.Changed.Count; j++) grows |= Join(changed, turn.Changed[j]);
            }

        return grows;
    }

    private bool Join(int thing, BitArray others)
    {
        if (_apart[thing][thing]) return false;
        var more = new BitArray(_apart[thing]).Or(_together[thing]).Not().And(others);
        if (!more.HasAnySet()) return false;
        _together[thing].Or(more);
        foreach (var other in Each(more)) _together[other][thing] = true;
        return true;
    }

    // What can hold beside one of each of these; null where no two of some pair of them can hold together.
    private BitArray? BesideAll(IReadOnlyList<BitArray> needed)
    {
        var all = None().Not();
        for (var i = 0; i < needed.Count; i++)
        {
            var beside = None();
            foreach (var thing in Each(needed[i])) beside.Or(_together[thing]);
            for (var j = i; j < needed.Count; j++)
                if (!new BitArray(beside).And(needed[j]).HasAnySet()) return null;
            all.And(beside);
        }

        return all;
    }

    // A step: of each of these one has to hold, what it leaves as it is, and of each of these one holds once it is done.
    private sealed record Turn(IReadOnlyList<BitArray> Needed, BitArray Left, IReadOnlyList<BitArray> Changed);
}
