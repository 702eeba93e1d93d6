using ProcedureRules.Scheduling;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

/// <summary>Loads for tests, and what has to hold of every placement of one.</summary>
internal static class Loads
{
    private const long Minute = 60;

    public static WorkLoad Of(long[] lengths, Lag[][] before, int technicians = 9, Lag[][]? within = null) => new()
    {
        Lengths = lengths,
        Hands = [.. lengths.Select(_ => 1)],
        Places = [.. lengths.Select(_ => -1)],
        Before = before,
        Within = within ?? [.. lengths.Select(_ => Array.Empty<Lag>())],
        Releases = new long[lengths.Length],
        Deadlines = [.. lengths.Select(_ => long.MaxValue)],
        Rooms = [],
        Technicians = technicians,
    };

    /// <summary>A random job: steps of 5 to 90 minutes that come after some of those before them, some for two people, places, some waits.</summary>
    public static WorkLoad Random(Random random, int count, int technicians, bool hasBounds = false)
    {
        var before = new Lag[count][];
        var within = new Lag[count][];
        for (var i = 0; i < count; i++)
        {
            var after = Enumerable.Range(Math.Max(0, i - 12), Math.Min(12, i)).Where(_ => random.NextDouble() < 0.15).ToList();
            before[i] = [.. after.Select(other => new Lag(other, random.Next(8) == 0 ? Minute * random.Next(10, random.Next(6) == 0 ? 900 : 120) : 0))];
            within[i] = hasBounds && after.Count > 0 && random.Next(6) == 0 ? [new Lag(after[^1], before[i][^1].Seconds + (Minute * random.Next(15, 120)))] : [];
        }
        return new WorkLoad
        {
            Lengths = [.. Enumerable.Range(0, count).Select(_ => Minute * random.Next(5, random.Next(4) == 0 ? 90 : 30))],
            Hands = [.. Enumerable.Range(0, count).Select(_ => random.Next(8) == 0 ? 2 : random.Next(12) == 0 ? Workshop.MostTechnicians : 1)],
            Places = [.. Enumerable.Range(0, count).Select(_ => random.Next(3) - 1)],
            Before = before,
            Within = within,
            Releases = [.. Enumerable.Range(0, count).Select(_ => random.Next(20) == 0 ? Minute * random.Next(300) : 0)],
            Deadlines = [.. Enumerable.Range(0, count).Select(_ => long.MaxValue)],
            Rooms = [1, 2],
            Technicians = technicians,
        };
    }

    /// <summary>That a placement keeps order, waits, hands, places and opening hours.</summary>
    public static void AssertKept(WorkLoad load, Placement placement, WorkCalendar calendar)
    {
        for (var i = 0; i < load.Count; i++)
        {
            var (start, end) = (placement.Starts[i], placement.Ends[i]);
            Assert.True(start >= load.Releases[i], $"{i} starts before it may");
            Assert.All(load.Before[i], lag => Assert.True(start >= placement.Ends[lag.Other] + lag.Seconds, $"{i} starts before {lag.Other} and its wait are over"));
            Assert.Equal(load.Lengths[i], calendar.OpenBetween(start, end));
            if (load.Lengths[i] <= calendar.Longest) Assert.Equal(load.Lengths[i], end - start);
            var beside = Enumerable.Range(0, load.Count).Where(other => placement.Starts[other] <= start && placement.Ends[other] > start).ToList();
            Assert.True(beside.Sum(load.Busy) <= load.Technicians, $"too many hands when {i} starts");
            if (load.Places[i] >= 0)
                Assert.True(beside.Where(other => load.Places[other] == load.Places[i]).Sum(load.Room) <= load.Rooms[load.Places[i]], $"too many people where {i} is done");
        }
        Assert.Equal(Placer.Broken(load, placement.Starts, placement.Ends), placement.Broken);
        Assert.Equal(placement.Ends.Max(), placement.Finish);
    }
}
