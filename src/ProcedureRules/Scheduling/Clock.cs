namespace ProcedureRules.Scheduling;

/// <summary>The time of a shop, counted in seconds from the moment a job begins.</summary>
internal sealed class Clock
{
    private readonly OpeningHours _hours;

    private Clock(OpeningHours hours, DateTime start) => (_hours, Start) = (hours, start);

    /// <summary>When the job begins.</summary>
    public DateTime Start { get; }

    /// <summary>A clock that starts at a moment, or at the next opening.</summary>
    public static Clock From(OpeningHours hours, DateTime start)
    {
        var minute = start.Date.AddMinutes(Math.Floor(start.TimeOfDay.TotalMinutes));
        var clock = new Clock(hours, minute);
        return new Clock(hours, clock.At(clock.Calendar().OpenFrom(0)));
    }

    /// <summary>The calendar from the start on, for one search.</summary>
    public WorkCalendar Calendar() => new(_hours, Start);

    /// <summary>The date and time of a moment; the end of time for what lies beyond.</summary>
    public DateTime At(long seconds) =>
        seconds >= (DateTime.MaxValue - Start).TotalSeconds ? DateTime.MaxValue : Start.AddSeconds(seconds);
}
