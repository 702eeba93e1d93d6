using FsCheck.Xunit;
using ProcedureRules.Scheduling;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

public class WorkCalendarTests
{
    private const long Hour = 3600;
    private const long Day = 24 * Hour;

    // A Wednesday.
    private static readonly DateTime Morning = new(2026, 11, 25, 8, 0, 0);

    [Fact]
    public void Fit_WhatIsNotDoneByClosingTime_StartsTheNextMorning() =>
        Assert.Equal(new Stretch(Day, Day + (2 * Hour)), new WorkCalendar(OpeningHours.Usual, Morning).Fit(8 * Hour, 2 * Hour));

    [Fact]
    public void Fit_OnFridayAfternoon_GoesOnOnMonday() =>
        Assert.Equal(new Stretch(5 * Day, (5 * Day) + (2 * Hour)), new WorkCalendar(OpeningHours.Usual, Morning).Fit((2 * Day) + (8 * Hour), 2 * Hour));

    [Fact]
    public void Fit_LongerThanAnyDay_IsSplitAtClosingTime() =>
        Assert.Equal(new Stretch(0, Day + Hour), new WorkCalendar(OpeningHours.Usual, Morning).Fit(0, 10 * Hour));

    [Fact]
    public void Fit_OnAClosedDay_WaitsForTheNextOpenOne()
    {
        var hours = OpeningHours.Usual.Without([new DateOnly(2026, 11, 26)]);
        Assert.Equal(2 * Day, new WorkCalendar(hours, Morning).Fit(8 * Hour, 2 * Hour).From);
    }

    [Fact]
    public void Fit_StartAtNight_IsTheNextOpening() =>
        Assert.Equal(10 * Hour, new WorkCalendar(OpeningHours.Usual, Morning.AddHours(14)).Fit(0, Hour).From);

    [Fact]
    public void Fit_OpenDayAndNight_RunsThroughMidnight() =>
        Assert.Equal(new Stretch(10 * Hour, 30 * Hour), new WorkCalendar(OpeningHours.Always, Morning).Fit(10 * Hour, 20 * Hour));

    [Fact]
    public void Fit_BeyondAllReckoning_EndsAllTheSame()
    {
        var calendar = new WorkCalendar(OpeningHours.Usual, new DateTime(9999, 12, 30, 9, 0, 0));
        Assert.True(calendar.Fit(0, 500_000_000).To >= 500_000_000);
        Assert.True(new WorkCalendar(OpeningHours.Usual, Morning).Fit(0, 500_000_000).To >= 500_000_000);
    }

    [Property]
    public void Mirrored_OpenBetween_IsThatOfTheSameTimesSeenFromTheEnd(ushort from, ushort length, ushort rest)
    {
        var (end, start) = ((from + (long)length + rest) * 60, from * 60L);
        var calendar = new WorkCalendar(OpeningHours.Usual, Morning);

        Assert.Equal(calendar.OpenBetween(start, start + (length * 60L)), calendar.Mirrored(end).OpenBetween(end - start - (length * 60L), end - start));
    }

    [Property]
    public void After_OpenSeconds_AreOpenBetween(ushort from, ushort open)
    {
        var calendar = new WorkCalendar(OpeningHours.Usual, Morning);
        var start = calendar.OpenFrom(from * 60L);

        Assert.Equal(open, calendar.OpenBetween(start, calendar.After(start, open)));
    }

    [Fact]
    public void OpeningHours_NeverOpenOrOutOfOrder_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => new OpeningHours(new Dictionary<DayOfWeek, IReadOnlyList<OpenPeriod>>()));
        Assert.Throws<ArgumentException>(() => new OpeningHours(new Dictionary<DayOfWeek, IReadOnlyList<OpenPeriod>> { [DayOfWeek.Monday] = [new OpenPeriod(600, 500)] }));
    }
}
