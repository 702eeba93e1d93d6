using ProcedureRules.Plans;

namespace ProcedureRules.Scheduling;

/// <summary>
/// Puts a plan in time: technicians, places, waits and opening hours, with the earliest finish it finds. Of the plan's order it keeps what binds.
/// A step does not run over closing time, unless it takes longer than the shop is ever open at a stretch; a wait does.
/// </summary>
/// <remarks>Holds no state; safe on many threads. The same plan, shop and start give the same schedule.</remarks>
public static class Scheduler
{
    internal const int MostPlaced = 24_000;

    /// <summary>Schedules a plan.</summary>
    /// <param name="plan">The plan; one that stops has nothing to schedule.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="start">When the job may begin, in the time of the shop; in closed hours it begins at the next opening.</param>
    /// <param name="cancellation">Ends the search early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static Schedule Schedule(Plan plan, Workshop shop, DateTime start, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shop);
        var clock = Clock.From(shop.Hours, start);
        var writer = new LoadWriter(plan, shop);
        var load = writer.Write(ScheduleCase.Likely);
        var likely = Best(load, clock, MostPlaced, cancellation);
        // What might happen at best and at worst is an estimate: a shorter search is enough.
        var low = Best(writer.Write(ScheduleCase.Low), clock, MostPlaced / 4, cancellation);
        var high = Best(writer.Write(ScheduleCase.High), clock, MostPlaced / 4, cancellation);
        var chain = new ChainFinder(load, likely, clock.Calendar()).Find();
        return new Schedule
        {
            Plan = plan,
            Shop = shop,
            Start = clock.Start,
            Finish = clock.At(likely.Finish),
            Steps = Steps(plan, load, likely, clock, chain.Select(link => link.Piece).ToHashSet()),
            Labour = new Estimate(Labour(plan, ScheduleCase.Low), Labour(plan, ScheduleCase.Likely), Labour(plan, ScheduleCase.High)),
            Elapsed = new Estimate(Span(Math.Min(low.Finish, likely.Finish)), Span(likely.Finish), Span(Math.Max(high.Finish, likely.Finish))),
            Idle = Span(Idle(load, likely, clock.Calendar())),
            CriticalChain = [.. chain.Select(link => new ChainLink(plan.Steps[link.Piece].Id, link.Cause))],
            Preparations = PreparationList.Of(plan, shop, likely.Starts, clock),
            UnkeptWaits = UnkeptWaits(plan, likely),
        };
    }

    private static Placement Best(WorkLoad load, Clock clock, int budget, CancellationToken cancellation) =>
        PlacementSearch.Best(load, clock.Calendar(), budget, cancellation);

    private static IReadOnlyList<ScheduledStep> Steps(Plan plan, WorkLoad load, Placement placement, Clock clock, HashSet<int> critical)
    {
        var who = Roster.Of(plan, load, placement);
        return [.. Enumerable.Range(0, load.Count)
            .OrderBy(i => placement.Starts[i]).ThenBy(i => i)
            .Select(i => new ScheduledStep
            {
                Step = plan.Steps[i],
                Start = clock.At(placement.Starts[i]),
                End = clock.At(placement.Ends[i]),
                Technicians = who[i],
                Helpers = Math.Max(0, plan.Steps[i].Step.Operation.Hands - load.Technicians),
                WaitOver = WaitOver(load, placement, i) is { } over ? clock.At(over) : null,
                IsSplit = placement.Ends[i] - placement.Starts[i] > load.Lengths[i],
                IsCritical = critical.Contains(i),
                IsAlone = load.Hands[i] > plan.Steps[i].Step.Operation.Hands && load.Technicians > who[i].Count,
            })];
    }

    private static long? WaitOver(WorkLoad load, Placement placement, int piece)
    {
        long? over = load.Releases[piece] > 0 ? load.Releases[piece] : null;
        foreach (var lag in load.Before[piece])
            if (lag.Seconds > 0) over = Math.Max(over ?? 0, placement.Ends[lag.Other] + lag.Seconds);
        return over;
    }

    private static TimeSpan Labour(Plan plan, ScheduleCase given) =>
        Span(plan.Steps.Sum(step => LoadWriter.Labour(step, given)));

    // Open time that no step covers.
    private static long Idle(WorkLoad load, Placement placement, WorkCalendar calendar)
    {
        var (idle, covered) = (0L, 0L);
        foreach (var i in Enumerable.Range(0, load.Count).OrderBy(i => placement.Starts[i]))
        {
            if (placement.Starts[i] > covered) idle += calendar.OpenBetween(covered, placement.Starts[i]);
            covered = Math.Max(covered, placement.Ends[i]);
        }
        return idle;
    }

    private static List<UnkeptWait> UnkeptWaits(Plan plan, Placement placement)
    {
        var indices = plan.Steps.Select((step, index) => (step.Id, index)).ToDictionary(entry => entry.Id, entry => entry.index);
        var unkept = new List<UnkeptWait>();
        for (var i = 0; i < plan.Steps.Count; i++)
            foreach (var wait in plan.Steps[i].Waits)
            {
                if (LoadWriter.LatestStart(wait, wait.AfterStep is { } id ? placement.Ends[indices[id]] : 0) is { } latest && placement.Starts[i] > latest)
                    unkept.Add(new UnkeptWait(plan.Steps[i].Id, wait, Span(placement.Starts[i] - latest)));
            }
        return unkept;
    }

    private static TimeSpan Span(long seconds) => TimeSpan.FromSeconds(Math.Min(seconds, (long)TimeSpan.MaxValue.TotalSeconds - 1));
}
