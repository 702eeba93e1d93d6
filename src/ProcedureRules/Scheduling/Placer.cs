namespace ProcedureRules.Scheduling;

/// <summary>
/// Places work piece by piece, the most urgent of those that may come next, each at the first moment at which all it needs is there (a serial
/// schedule generation scheme). A bound on a wait that is not kept sets the piece it counts from back, and the work is placed anew.
/// </summary>
/// <remarks>For one thread at a time.</remarks>
internal sealed class Placer
{
    private const int MostRetries = 24;
    private readonly WorkLoad _load;
    private readonly int[][] _after;
    private readonly bool _hasBounds;
    private readonly Profile _technicians = new();
    private readonly Profile[] _rooms;
    private readonly int[] _open;
    private readonly List<int> _ready = [];
    private readonly long[] _releases;
    private readonly long[] _starts;
    private readonly long[] _ends;

    public Placer(WorkLoad load)
    {
        _load = load;
        _after = new int[load.Count][];
        var after = load.Before.Select(_ => new List<int>()).ToArray();
        for (var i = 0; i < load.Count; i++)
            foreach (var lag in load.Before[i]) after[lag.Other].Add(i);
        for (var i = 0; i < load.Count; i++) _after[i] = [.. after[i]];
        _hasBounds = load.Within.Any(lags => lags.Length > 0);
        _rooms = [.. load.Rooms.Select(_ => new Profile())];
        (_open, _releases, _starts, _ends) = (new int[load.Count], new long[load.Count], new long[load.Count], new long[load.Count]);
    }

    /// <summary>How many pieces have been placed so far: what a search has cost.</summary>
    public long Placed { get; private set; }

    /// <summary>Places all work.</summary>
    /// <param name="urgency">The lowest comes first; of equals the first in the load.</param>
    /// <param name="calendar">When work goes on.</param>
    /// <param name="isAlone">Whether nothing but the order counts, as if there were room and hands for everything.</param>
    public Placement Place(ReadOnlySpan<double> urgency, WorkCalendar calendar, bool isAlone = false)
    {
        _load.Releases.CopyTo(_releases, 0);
        for (var retry = 0; ; retry++)
        {
            PlaceOnce(urgency, calendar, isAlone);
            if (!_hasBounds || retry == MostRetries || !SetBack()) break;
        }
        return new Placement([.. _starts], [.. _ends], Broken(_load, _starts, _ends), _ends.Length == 0 ? 0 : _ends.Max());
    }

    /// <summary>How many bounds on waits some times do not keep.</summary>
    public static int Broken(WorkLoad load, long[] starts, long[] ends)
    {
        var broken = 0;
        for (var i = 0; i < load.Count; i++)
        {
            if (starts[i] > load.Deadlines[i]) broken++;
            foreach (var lag in load.Within[i])
                if (starts[i] - ends[lag.Other] > lag.Seconds) broken++;
        }
        return broken;
    }

    private void PlaceOnce(ReadOnlySpan<double> urgency, WorkCalendar calendar, bool isAlone)
    {
        _technicians.Clear();
        foreach (var room in _rooms) room.Clear();
        _ready.Clear();
        for (var i = 0; i < _load.Count; i++)
        {
            _open[i] = _load.Before[i].Length;
            if (_open[i] == 0) _ready.Add(i);
        }
        while (_ready.Count > 0)
        {
            var piece = TakeMostUrgent(urgency);
            Place(piece, calendar, isAlone);
            Placed++;
            foreach (var next in _after[piece])
                if (--_open[next] == 0) _ready.Add(next);
        }
    }

    private int TakeMostUrgent(ReadOnlySpan<double> urgency)
    {
        var best = 0;
        for (var i = 1; i < _ready.Count; i++)
        {
            var (one, other) = (_ready[i], _ready[best]);
            if (urgency[one] < urgency[other] || (urgency[one] == urgency[other] && one < other)) best = i;
        }
        var piece = _ready[best];
        _ready[best] = _ready[^1];
        _ready.RemoveAt(_ready.Count - 1);
        return piece;
    }

    private void Place(int piece, WorkCalendar calendar, bool isAlone)
    {
        var from = _releases[piece];
        foreach (var lag in _load.Before[piece]) from = Math.Max(from, _ends[lag.Other] + lag.Seconds);
        var (busy, place) = (_load.Busy(piece), _load.Places[piece]);
        while (true)
        {
            var (start, end) = calendar.Fit(from, _load.Lengths[piece]);
            from = start;
            if (!isAlone)
            {
                from = _technicians.FirstWithRoom(start, end, busy, _load.Technicians);
                if (from == start && place >= 0) from = _rooms[place].FirstWithRoom(start, end, _load.Room(piece), _load.Rooms[place]);
            }
            if (from > start) continue;
            (_starts[piece], _ends[piece]) = (start, end);
            if (isAlone) return;
            _technicians.Take(start, end, busy);
            if (place >= 0) _rooms[place].Take(start, end, _load.Room(piece));
            return;
        }
    }

    // What a piece follows too late is set back, so that it ends just in time; whether anything was.
    private bool SetBack()
    {
        var isSetBack = false;
        for (var i = 0; i < _load.Count; i++)
            foreach (var lag in _load.Within[i])
            {
                if (_starts[i] - _ends[lag.Other] <= lag.Seconds) continue;
                _releases[lag.Other] = Math.Max(_releases[lag.Other] + 1, _starts[i] - lag.Seconds - _load.Lengths[lag.Other]);
                isSetBack = true;
            }
        return isSetBack;
    }
}
