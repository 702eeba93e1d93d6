namespace ProcedureRules.Scheduling;

/// <summary>The open stretches of a shop from the start of a schedule on, in seconds since then; reckoned as far as they are asked for.</summary>
/// <remarks>For one thread at a time.</remarks>
internal sealed class WorkCalendar
{
    // Beyond this nothing is planned day by day: the shop counts as open for good, so that no figure can make a search endless.
    private const int MostDays = 50 * 366;
    private const long Forever = long.MaxValue / 4;
    private const int Day = 86_400;

    private readonly List<Stretch> _open = [];
    private readonly OpeningHours? _hours;
    private readonly DateTime _midnight;
    private readonly long _sinceMidnight;
    private readonly int _mostDays;
    private int _days;

    /// <summary>The calendar of a shop; the start may lie in closed hours.</summary>
    public WorkCalendar(OpeningHours hours, DateTime start)
    {
        (_hours, _midnight, _sinceMidnight) = (hours, start.Date, (long)(start - start.Date).TotalSeconds);
        _mostDays = (int)Math.Min(MostDays, (DateTime.MaxValue.Date - _midnight).TotalDays - 1);
        Longest = LongestOf(hours);
        while (_open.Count == 0) AddDay();
    }

    private WorkCalendar(IEnumerable<Stretch> open, long longest)
    {
        _open.AddRange(open);
        Longest = longest;
    }

    /// <summary>The longest stretch of an ordinary week: what takes longer has to be split at closing time.</summary>
    public long Longest { get; }

    /// <summary>Open for good.</summary>
    public static WorkCalendar Always() => new([new Stretch(0, Forever)], Forever);

    /// <summary>The same hours seen from an end, as time runs backwards from there; open for good before the start.</summary>
    public WorkCalendar Mirrored(long end)
    {
        var upTo = IndexAt(end);
        var mirrored = new List<Stretch>();
        for (var i = Math.Min(upTo, _open.Count - 1); i >= 0; i--)
            if (_open[i].From < end) mirrored.Add(new Stretch(end - Math.Min(end, _open[i].To), end - _open[i].From));
        mirrored.Add(new Stretch(end, Forever));
        return new WorkCalendar(mirrored, Longest);
    }

    /// <summary>The first start from a moment on at which work of some length fits: within one stretch, unless no stretch is long enough.</summary>
    public Stretch Fit(long from, long length)
    {
        var i = IndexAt(from);
        if (length > Longest) return Split(i, from, length);
        while (true)
        {
            var start = Math.Max(from, _open[i].From);
            if (start + length <= _open[i].To) return new Stretch(start, start + length);
            if (++i == _open.Count && !Extend()) return new Stretch(start, start + length);
        }
    }

    /// <summary>The moment from which on the shop is open: the moment itself, or the next opening.</summary>
    public long OpenFrom(long moment) => Math.Max(moment, _open[IndexAt(moment)].From);

    /// <summary>Whether the shop opens at a moment.</summary>
    public bool OpensAt(long moment) => _open[IndexAt(moment)].From == moment;

    /// <summary>The open seconds between two moments.</summary>
    public long OpenBetween(long from, long to)
    {
        var sum = 0L;
        for (var i = IndexAt(from); i < _open.Count || Extend(); i++)
        {
            if (_open[i].From >= to) break;
            sum += Math.Max(0, Math.Min(to, _open[i].To) - Math.Max(from, _open[i].From));
        }
        return sum;
    }

    /// <summary>The moment at which some open seconds have gone by.</summary>
    public long After(long from, long open) => Split(IndexAt(from), from, open).To;

    private Stretch Split(int i, long from, long length)
    {
        var start = Math.Max(from, _open[i].From);
        var at = start;
        while (at + length > _open[i].To)
        {
            length -= _open[i].To - at;
            if (++i == _open.Count && !Extend()) return new Stretch(start, at + length);
            at = _open[i].From;
        }
        return new Stretch(start, at + length);
    }

    // The first stretch that is not over at a moment.
    private int IndexAt(long moment)
    {
        while (_open[^1].To <= moment && Extend()) { }
        var (low, high) = (0, _open.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_open[middle].To > moment) high = middle;
            else low = middle + 1;
        }
        return low;
    }

    private bool Extend()
    {
        if (_open[^1].To >= Forever) return false;
        var count = _open.Count;
        while (_open.Count == count && _open[^1].To < Forever) AddDay();
        return _open.Count > count;
    }

    private void AddDay()
    {
        var midnight = (_days * (long)Day) - _sinceMidnight;
        if (_days >= _mostDays) Add(new Stretch(midnight, Forever));
        else
        {
            foreach (var period in _hours!.On(DateOnly.FromDateTime(_midnight.AddDays(_days)))) Add(new Stretch(midnight + (period.From * 60), midnight + (period.To * 60)));
            _days++;
        }
    }

    // What goes on without a break is one stretch, over midnight too.
    private void Add(Stretch stretch)
    {
        var from = Math.Max(0, stretch.From);
        if (from >= stretch.To) return;
        if (_open.Count > 0 && _open[^1].To == from) _open[^1] = new Stretch(_open[^1].From, stretch.To);
        else _open.Add(new Stretch(from, stretch.To));
    }

    private static long LongestOf(OpeningHours hours)
    {
        // Two weeks without the days closed for once: the first Monday of the calendar is as good as any.
        var (longest, run, end) = (0L, 0L, -1L);
        for (var day = 0; day < 14; day++)
            foreach (var period in hours.Ordinarily((DayOfWeek)(day % 7)))
            {
                var from = (day * 24L * 60) + period.From;
                run = from == end ? run + period.To - period.From : period.To - period.From;
                end = from + period.To - period.From;
                longest = Math.Max(longest, run);
            }
        return longest == 14 * 24 * 60 ? Forever : longest * 60;
    }
}
