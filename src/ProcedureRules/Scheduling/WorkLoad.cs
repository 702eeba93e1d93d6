namespace ProcedureRules.Scheduling;

/// <summary>
/// What is to be scheduled, in plain numbers: pieces of work with their length, hands and place, what they come after, and who is there. The
/// pieces stand in an order in which they could be done one after the other.
/// </summary>
internal sealed class WorkLoad
{
    /// <summary>How long each takes, in seconds.</summary>
    public required long[] Lengths { get; init; }

    /// <summary>How many hands each takes; more than there are technicians means all of them.</summary>
    public required int[] Hands { get; init; }

    /// <summary>The place of each, an index into <see cref="Rooms"/>; -1 for a place that holds all.</summary>
    public required int[] Places { get; init; }

    /// <summary>What each comes after, and how long after its end at least.</summary>
    public required Lag[][] Before { get; init; }

    /// <summary>What each has to follow, and how long after its end at most.</summary>
    public required Lag[][] Within { get; init; }

    /// <summary>Before when none may start.</summary>
    public required long[] Releases { get; init; }

    /// <summary>After when none may start; <see cref="long.MaxValue"/> for no bound.</summary>
    public required long[] Deadlines { get; init; }

    /// <summary>How many people fit into each limited place.</summary>
    public required int[] Rooms { get; init; }

    /// <summary>How many technicians there are.</summary>
    public required int Technicians { get; init; }

    /// <summary>How many pieces there are.</summary>
    public int Count => Lengths.Length;

    /// <summary>The technicians a piece of work keeps busy.</summary>
    public int Busy(int piece) => Math.Min(Hands[piece], Technicians);

    /// <summary>The room a piece of work takes; one that takes more hands than fit has the place to itself.</summary>
    public int Room(int piece) => Math.Min(Busy(piece), Rooms[Places[piece]]);

    /// <summary>The same work for another number of technicians.</summary>
    public WorkLoad For(int technicians) => new()
    {
        Lengths = Lengths,
        Hands = Hands,
        Places = Places,
        Before = Before,
        Within = Within,
        Releases = Releases,
        Deadlines = Deadlines,
        Rooms = Rooms,
        Technicians = technicians,
    };

    /// <summary>The same work seen from its end, as time runs backwards; what starts early enough there may be late here.</summary>
    public WorkLoad Mirrored() => new()
    {
        Lengths = Lengths,
        Hands = Hands,
        Places = Places,
        Before = Turned(Before),
        Within = Turned(Within),
        Releases = new long[Count],
        Deadlines = [.. Enumerable.Repeat(long.MaxValue, Count)],
        Rooms = Rooms,
        Technicians = Technicians,
    };

    private static Lag[][] Turned(Lag[][] lags)
    {
        var turned = lags.Select(_ => new List<Lag>()).ToArray();
        for (var i = 0; i < lags.Length; i++)
            foreach (var lag in lags[i]) turned[lag.Other].Add(new Lag(i, lag.Seconds));
        return [.. turned.Select(list => list.ToArray())];
    }
}
