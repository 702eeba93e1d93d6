namespace ProcedureRules.Scheduling;

/// <summary>Follows a placement back from its end: each piece to what keeps it from starting earlier.</summary>
internal sealed class ChainFinder(WorkLoad load, Placement placement, WorkCalendar calendar)
{
    /// <summary>The chain from its first piece to the last one.</summary>
    public IReadOnlyList<(int Piece, ChainCause Cause)> Find()
    {
        var chain = new List<(int Piece, ChainCause Cause)>();
        var piece = Enumerable.Range(0, load.Count).FirstOrDefault(i => placement.Ends[i] == placement.Finish, -1);
        while (piece >= 0)
        {
            var (before, cause) = WhatHolds(piece);
            chain.Add((piece, cause));
            piece = before;
        }
        chain.Reverse();
        return chain;
    }

    private (int Before, ChainCause Cause) WhatHolds(int piece)
    {
        var start = placement.Starts[piece];
        var (ready, before, cause) = (load.Releases[piece], -1, load.Releases[piece] > 0 ? ChainCause.Wait : ChainCause.Begin);
        foreach (var lag in load.Before[piece])
        {
            var moment = placement.Ends[lag.Other] + lag.Seconds;
            if (moment < ready || (moment == ready && before >= 0)) continue;
            (ready, before, cause) = (moment, lag.Other, lag.Seconds > 0 ? ChainCause.Wait : ChainCause.Order);
        }
        if (StartFrom(ready, piece) == start) return (before, cause == ChainCause.Order && ready < start ? ChainCause.Hours : cause);
        var (busy, why) = WhoIsBusy(piece, start);
        if (busy < 0 || placement.Ends[busy] < ready) return (before, ChainCause.Hours);
        return (busy, placement.Ends[busy] < start ? ChainCause.Hours : why);
    }

    private long StartFrom(long moment, int piece) => calendar.Fit(moment, load.Lengths[piece]).From;

    // The last one to end before it starts, of those that it could not have run beside.
    private (int Piece, ChainCause Cause) WhoIsBusy(int piece, long start)
    {
        var (found, cause) = (-1, ChainCause.Technicians);
        for (var i = 0; i < load.Count; i++)
        {
            if (i == piece || load.Lengths[i] == 0 || placement.Ends[i] > start || (found >= 0 && placement.Ends[i] <= placement.Ends[found])) continue;
            var isAtPlace = load.Places[piece] >= 0 && load.Places[i] == load.Places[piece] && load.Room(i) + load.Room(piece) > load.Rooms[load.Places[i]];
            (found, cause) = (i, isAtPlace ? ChainCause.Place : ChainCause.Technicians);
        }
        return (found, cause);
    }
}
