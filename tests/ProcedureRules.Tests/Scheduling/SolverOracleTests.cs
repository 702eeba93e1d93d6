using Google.OrTools.Sat;
using ProcedureRules.Scheduling;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

/// <summary>Against an exact solver: the CP-SAT of OR-Tools proves the earliest finish, or a bound that nothing can beat.</summary>
public class SolverOracleTests
{
    private const int Jobs = 36;
    private const long Minute = 60;

    [Fact]
    public void Best_RandomJobsUpToSixtySteps_AreNearTheOptimum()
    {
        var random = new Random(1);
        var gaps = new List<double>();
        for (var i = 0; i < Jobs; i++)
        {
            var load = Loads.Random(random, random.Next(10, 61), random.Next(1, 4));
            var found = PlacementSearch.Best(load, Calendar(), Scheduler.MostPlaced, TestContext.Current.CancellationToken);
            Loads.AssertKept(load, found, Calendar());
            var best = Optimum(load, found);
            Assert.True(found.Finish >= best.Bound, $"job {i} ends before the bound of the solver");
            // Where the solver runs out of time its best may be later than ours: that makes up for nothing.
            gaps.Add(Math.Max(0, (double)(found.Finish - best.Finish) / best.Finish));
        }

        Assert.True(gaps.Average() <= 0.01, $"mean gap {gaps.Average():P2}");
        Assert.True(gaps.Max() <= 0.05, $"worst gap {gaps.Max():P2}");
    }

    private static WorkCalendar Calendar() => new(OpeningHours.Usual, new DateTime(2026, 11, 25, 8, 0, 0));

    // In minutes, since all figures of the random jobs are whole minutes.
    private static (long Finish, long Bound) Optimum(WorkLoad load, Placement hint)
    {
        var (model, calendar, horizon) = (new CpModel(), Calendar(), hint.Finish / Minute);
        var starts = new IntVar[load.Count];
        var intervals = new IntervalVar[load.Count];
        for (var i = 0; i < load.Count; i++)
        {
            var length = load.Lengths[i] / Minute;
            starts[i] = model.NewIntVarFromDomain(Starts(calendar, horizon, length), $"s{i}");
            intervals[i] = model.NewFixedSizeIntervalVar(starts[i], length, $"i{i}");
            model.Add(starts[i] >= (load.Releases[i] + Minute - 1) / Minute);
            model.AddHint(starts[i], hint.Starts[i] / Minute);
        }
        for (var i = 0; i < load.Count; i++)
            foreach (var lag in load.Before[i]) model.Add(starts[i] >= starts[lag.Other] + ((load.Lengths[lag.Other] + lag.Seconds) / Minute));
        var technicians = model.AddCumulative(load.Technicians);
        for (var i = 0; i < load.Count; i++) technicians.AddDemand(intervals[i], load.Busy(i));
        for (var place = 0; place < load.Rooms.Length; place++)
        {
            var room = model.AddCumulative(load.Rooms[place]);
            for (var i = 0; i < load.Count; i++)
                if (load.Places[i] == place) room.AddDemand(intervals[i], load.Room(i));
        }
        var finish = model.NewIntVar(0, horizon, "finish");
        for (var i = 0; i < load.Count; i++) model.Add(finish >= starts[i] + (load.Lengths[i] / Minute));
        model.Minimize(finish);
        var solver = new CpSolver { StringParameters = "max_time_in_seconds:2 num_workers:1" };
        var status = solver.Solve(model);
        Assert.True(status is CpSolverStatus.Optimal or CpSolverStatus.Feasible, status.ToString());
        return ((long)solver.ObjectiveValue * Minute, (long)Math.Ceiling(solver.BestObjectiveBound) * Minute);
    }

    private static Google.OrTools.Util.Domain Starts(WorkCalendar calendar, long horizon, long length)
    {
        var stretches = new List<long[]>();
        for (var at = calendar.Fit(0, length * Minute).From; at / Minute <= horizon; at = calendar.Fit(stretches[^1][1] * Minute + Minute, length * Minute).From)
        {
            var last = at;
            // A stretch is at most a day of the usual hours long: walk to its end by halves of an hour, then by minutes.
            foreach (var step in new[] { 30 * Minute, Minute })
                while (calendar.Fit(last + step, length * Minute).From == last + step) last += step;
            stretches.Add([at / Minute, last / Minute]);
        }
        return Google.OrTools.Util.Domain.FromIntervals([.. stretches]);
    }
}
