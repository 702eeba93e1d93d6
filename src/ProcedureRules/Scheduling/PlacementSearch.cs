namespace ProcedureRules.Scheduling;

/// <summary>
/// Looks for an early finish: a few rules of urgency, then the best found shaken a little, straightened backwards and forwards
/// (forward-backward improvement), until it meets a bound that nothing can beat or has cost enough. The same load gives the same result.
/// </summary>
internal sealed class PlacementSearch
{
    private const int Seed = 20;
    private readonly WorkLoad _load;
    private readonly WorkCalendar _calendar;
    private readonly Placer _forward;
    private readonly Placer _backward;
    private readonly CriticalPath _path;
    private readonly CancellationToken _cancellation;
    private readonly long _bound;
    private readonly long[] _latest;
    private readonly long[] _times;
    private readonly int[] _order;
    private Placement? _best;

    private PlacementSearch(WorkLoad load, WorkCalendar calendar, CancellationToken cancellation)
    {
        (_load, _calendar, _cancellation) = (load, calendar, cancellation);
        (_times, _order) = (new long[load.Count], new int[load.Count]);
        (_forward, _backward) = (new Placer(load), new Placer(load.Mirrored()));
        _path = CriticalPath.Of(load);
        _bound = Bound();
        var back = _backward.Place(new double[load.Count], calendar.Mirrored(_bound), isAlone: true);
        _latest = [.. back.Ends.Select(end => _bound - end)];
    }

    private bool IsBest => _best is { Broken: 0 } best && best.Finish <= _bound;

    /// <summary>The best placement found.</summary>
    /// <param name="load">The work.</param>
    /// <param name="calendar">When work goes on.</param>
    /// <param name="budget">How many pieces may be placed, roughly.</param>
    /// <param name="cancellation">Ends the search early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static Placement Best(WorkLoad load, WorkCalendar calendar, int budget, CancellationToken cancellation)
    {
        // What fewer technicians can do, more can: so that one more never makes it later.
        Placement? best = null;
        for (var technicians = 1; technicians <= load.Technicians; technicians++)
        {
            var search = new PlacementSearch(load.For(technicians), calendar, cancellation) { _best = best };
            search.Run(technicians == load.Technicians ? budget : budget / 8);
            best = search._best!;
        }
        return best!;
    }

    private void Run(int budget)
    {
        var random = new Random(Seed);
        var urgency = new double[_load.Count];
        foreach (var rule in Rules())
        {
            if (IsBest) return;
            for (var i = 0; i < urgency.Length; i++) urgency[i] = rule(i);
            Improve(Take(_forward.Place(urgency, _calendar)));
        }
        var current = _best!;
        while (!IsBest && _forward.Placed + _backward.Placed < budget)
        {
            _cancellation.ThrowIfCancellationRequested();
            Shake(random.Next(3) == 0 ? _latest : current.Starts, random, urgency);
            var next = Improve(Take(_forward.Place(urgency, _calendar)));
            if (!current.Beats(next)) current = next;
            else if (random.NextDouble() < 0.05) current = _best!;
        }
    }

    // The order of some times, with pieces moved a few places.
    private void Shake(long[] times, Random random, double[] urgency)
    {
        var reach = 1 + (_load.Count * 0.25 * random.NextDouble());
        var share = 0.1 + (0.4 * random.NextDouble());
        for (var i = 0; i < _order.Length; i++) _order[i] = i;
        times.CopyTo(_times, 0);
        Array.Sort(_times, _order);
        for (var rank = 0; rank < _order.Length; rank++)
            urgency[_order[rank]] = rank + (random.NextDouble() < share ? reach * ((2 * random.NextDouble()) - 1) : 0);
    }

    // The order of the plan first: of equally early finishes the one that leaves it as it is.
    private IEnumerable<Func<int, double>> Rules() =>
    [
        piece => piece,
        piece => _latest[piece],
        piece => _latest[piece] + _load.Lengths[piece],
        piece => _path.Latest[piece],
        piece => _path.Latest[piece] + _load.Lengths[piece],
        piece => _path.Earliest[piece],
    ];

    private Placement Improve(Placement found)
    {
        while (!IsBest)
        {
            var urgency = new double[_load.Count];
            for (var i = 0; i < urgency.Length; i++) urgency[i] = -found.Ends[i];
            var back = _backward.Place(urgency, _calendar.Mirrored(found.Finish));
            for (var i = 0; i < urgency.Length; i++) urgency[i] = -back.Ends[i];
            var again = Take(_forward.Place(urgency, _calendar));
            if (!again.Beats(found)) return found;
            found = again;
        }
        return found;
    }

    private Placement Take(Placement placement)
    {
        if (placement.Beats(_best)) _best = placement;
        return placement;
    }

    // Nothing ends before the longest chain does with hands and room for all, nor before the work is done that technicians or a place have to do.
    private long Bound()
    {
        var bound = new Placer(_load).Place(new double[_load.Count], _calendar, isAlone: true).Finish;
        var (work, rooms) = (0L, new long[_load.Rooms.Length]);
        for (var i = 0; i < _load.Count; i++)
        {
            work += _load.Lengths[i] * _load.Busy(i);
            if (_load.Places[i] >= 0) rooms[_load.Places[i]] += _load.Lengths[i] * _load.Room(i);
        }
        bound = Math.Max(bound, _calendar.After(0, Shared(work, _load.Technicians)));
        for (var i = 0; i < rooms.Length; i++) bound = Math.Max(bound, _calendar.After(0, Shared(rooms[i], _load.Rooms[i])));
        return bound;
    }

    private static long Shared(long work, int among) => (work + among - 1) / among;
}
