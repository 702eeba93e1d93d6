namespace ProcedureRules.Ordering;

/// <summary>The laws of the simulation: what can be done at a moment, and what stands in the way.</summary>
internal sealed class Motion(World world, int mostRepeats)
{
    public World World { get; } = world;

    public bool Can(Moment moment, Work work) => !Obstacles(moment, work).Any();

    /// <summary>What keeps a step from being done; nothing if it can be done.</summary>
    public IEnumerable<Obstacle> Obstacles(Moment moment, Work work)
    {
        if (moment.Times(work) >= mostRepeats || !IsOpen(moment, work)) yield return default;
        var state = moment.State;
        foreach (var shift in work.Shifts)
            if (!shift.From.Has(state[shift.Variable])) yield return new Obstacle(new Guard(shift.Variable, shift.From), null, null, null);
        foreach (var need in work.Needs)
            if (need.Fails(state)) yield return new Obstacle(need.Wanted, null, need.Source, null);
        foreach (var edge in work.Before)
            if (Waits(moment, edge)) yield return new Obstacle(null, edge.First, edge.Source, null);
        if (moment.Times(work) == 0)
            foreach (var edge in work.Behind)
                if (CameFirst(moment, edge)) yield return new Obstacle(null, null, edge.Source, null);
        foreach (var guards in work.ForbiddenWhen)
            if (Guard.All(guards, state)) yield return default;

        var after = moment.StateAfter(work);
        foreach (var keeping in World.Keepings)
            if (keeping.Fails(after) && !keeping.Fails(state)) yield return new Obstacle(keeping.Kept, null, null, keeping);
        foreach (var (forbidden, guards) in World.Forbidden)
            if (forbidden.Holds(after) && Guard.All(guards, after) && !(forbidden.Holds(state) && Guard.All(guards, state))) yield return default;
    }

    /// <summary>Whether a step takes away a state that another one, still to come, finds as it needs it.</summary>
    public static bool Spoils(Moment moment, Work work, Work other)
    {
        foreach (var shift in work.Shifts)
        {
            var before = moment.State[shift.Variable];
            var after = shift.To >= 0 ? shift.To : moment.Found(work, shift.Variable) ?? before;
            if (before == after) continue;
            foreach (var theirs in other.Shifts)
                if (theirs.Variable == shift.Variable && theirs.From.Has(before) && !theirs.From.Has(after)) return true;
            foreach (var need in other.Needs)
                if (need.Wanted.Variable == shift.Variable && need.Wanted.States.Has(before) && !need.Wanted.States.Has(after)
                    && Guard.All(need.Guards, moment.State)) return true;
        }
        return false;
    }

    public bool IsEnd(Moment moment)
    {
        foreach (var work in World.Works)
            if (work.IsDue && moment.Times(work) == 0) return false;
        if (moment.Owed().Any()) return false;
        foreach (var end in World.Ends)
            if (!end.State.Holds(moment.State)) return false;
        for (var i = 0; i < World.Waypoints.Count; i++)
            if (moment.Passed[i] < World.Waypoints[i].Count) return false;
        return true;
    }

    // What only undoes has to have something to undo.
    private static bool IsOpen(Moment moment, Work work) =>
        !work.IsOnlyUndoing || work.Undoes is null || Debt.Of(moment.Debts, work.Undoes) is not null;

    // The first of an edge has not been done though it will be, or it undoes something that is still undone.
    private static bool Waits(Moment moment, OrderEdge edge)
    {
        if (edge.Guards.Count > 0 && !Guard.All(edge.Guards, moment.State)) return false;
        var first = edge.First;
        if (first.Undoes is { } undone)
        {
            if (Debt.Of(moment.Debts, undone) is not null && undone.IsReturned) return true;
            if (moment.Times(first) == 0 && undone.IsDue && undone.IsReturned && moment.Times(undone) == 0) return true;
        }
        return first.IsDue && moment.Times(first) == 0;
    }

    // The second of an edge has been done while the edge bound, before a first that nobody had expected.
    private static bool CameFirst(Moment moment, OrderEdge edge)
    {
        if (moment.Times(edge.Second) == 0) return false;
        for (; moment.Earlier is { } earlier; moment = earlier)
            if (ReferenceEquals(moment.Did, edge.Second) && Guard.All(edge.Guards, earlier.State)) return true;
        return false;
    }
}
