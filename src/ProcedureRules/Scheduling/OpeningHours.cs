namespace ProcedureRules.Scheduling;

/// <summary>When a shop is open: periods for each day of the week, and days on which it stays closed.</summary>
public sealed class OpeningHours
{
    private const int MinutesOfADay = 24 * 60;
    private readonly IReadOnlyList<OpenPeriod>[] _days = new IReadOnlyList<OpenPeriod>[7];
    private readonly HashSet<DateOnly> _closed;

    /// <summary>Makes the hours of a shop.</summary>
    /// <param name="days">The periods of each day of the week; a day that is not named is closed.</param>
    /// <param name="closed">Days on which it is closed all the same.</param>
    /// <exception cref="ArgumentException">It is never open, or the periods of a day are out of order or overlap.</exception>
    public OpeningHours(IReadOnlyDictionary<DayOfWeek, IReadOnlyList<OpenPeriod>> days, IEnumerable<DateOnly>? closed = null)
    {
        ArgumentNullException.ThrowIfNull(days);
        for (var day = 0; day < 7; day++)
        {
            _days[day] = days.GetValueOrDefault((DayOfWeek)day, []);
            if (!AreInOrder(_days[day])) throw new ArgumentException($"the periods of {(DayOfWeek)day} are out of order", nameof(days));
        }
        if (_days.All(periods => periods.Count == 0)) throw new ArgumentException("the shop is never open", nameof(days));
        _closed = [.. closed ?? []];
    }

    /// <summary>Monday to Friday, eight to five.</summary>
    public static OpeningHours Usual { get; } = new(new[] { DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday }
        .ToDictionary(day => day, IReadOnlyList<OpenPeriod> (_) => [new OpenPeriod(8 * 60, 17 * 60)]));

    /// <summary>The same hours, but closed on some days.</summary>
    public OpeningHours Without(IEnumerable<DateOnly> closed) =>
        new(Enum.GetValues<DayOfWeek>().ToDictionary(day => day, day => _days[(int)day]), _closed.Concat(closed));

    /// <summary>Open day and night.</summary>
    public static OpeningHours Always { get; } = new(Enum.GetValues<DayOfWeek>().ToDictionary(day => day, IReadOnlyList<OpenPeriod> (_) => [new OpenPeriod(0, MinutesOfADay)]));

    /// <summary>The periods of a date, in order; none where it is closed.</summary>
    public IReadOnlyList<OpenPeriod> On(DateOnly date) => _closed.Contains(date) ? [] : _days[(int)date.DayOfWeek];

    internal IReadOnlyList<OpenPeriod> Ordinarily(DayOfWeek day) => _days[(int)day];

    internal static bool AreInOrder(IReadOnlyList<OpenPeriod> periods)
    {
        var at = 0;
        foreach (var period in periods)
        {
            if (period.From < at || period.To <= period.From || period.To > MinutesOfADay) return false;
            at = period.To;
        }
        return true;
    }
}
