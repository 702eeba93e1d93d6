using ProcedureRules.Plans;
using ProcedureRules.Scheduling;
using ProcedureRules.Validating;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

/// <summary>What has to hold of the schedule of a plan.</summary>
internal static class PlanSchedules
{
    /// <summary>Two technicians who stand in each other's way nowhere.</summary>
    public static Workshop Pair { get; } = Workshop.Usual with { Technicians = 2, Alone = new HashSet<string>() };

    /// <summary>A Wednesday morning.</summary>
    public static DateTime Morning { get; } = new(2026, 11, 25, 8, 0, 0);

    /// <summary>
    /// That the plan's own check passes the steps in every order in which a schedule may be carried out: by their starts, by their ends, and at
    /// random, where whatever runs side by side may come first.
    /// </summary>
    public static void AssertValidInEveryOrder(Schedule schedule, Random random)
    {
        Check(schedule, schedule.Steps.OrderBy(step => step.Start).ThenBy(step => step.End));
        Check(schedule, schedule.Steps.OrderBy(step => step.End).ThenBy(step => step.Start));
        for (var i = 0; i < 3; i++) Check(schedule, Shuffled(schedule.Steps, random));
    }

    /// <summary>That technicians do one thing at a time and each step keeps its waits and the shop's hours.</summary>
    public static void AssertKept(Schedule schedule)
    {
        var byId = schedule.Steps.ToDictionary(step => step.Step.Id);
        foreach (var step in schedule.Steps)
        {
            Assert.Equal(step.Step.Step.Operation.Hands, step.Technicians.Count + step.Helpers);
            Assert.All(schedule.Steps.Where(other => other != step && other.Start < step.End && step.Start < other.End), other =>
            {
                Assert.Empty(step.Technicians.Intersect(other.Technicians));
                Assert.False(step.IsAlone, $"{other.Step.Id} beside {step.Step.Id}");
            });
            foreach (var wait in step.Step.Waits)
            {
                var from = wait.AfterStep is { } id ? byId[id].End : schedule.Start - TimeSpan.FromSeconds(wait.Age!.Value.Low);
                if (wait.Least is { } least) Assert.True(step.Start >= from + TimeSpan.FromSeconds(Math.Floor(least.High)), $"{step.Step.Id} starts before its wait is over");
            }
            Assert.Contains(schedule.Shop.Hours.On(DateOnly.FromDateTime(step.Start)), period => Lies(step.Start, period));
            if (!step.IsSplit) Assert.Equal(step.Start.Date, step.End.Date);
        }
        Assert.True(schedule.Elapsed.Low <= schedule.Elapsed.Likely && schedule.Elapsed.Likely <= schedule.Elapsed.High);
        Assert.True(schedule.Labour.Low <= schedule.Labour.Likely && schedule.Labour.Likely <= schedule.Labour.High);
        if (schedule.Steps.Count > 0) Assert.Equal(schedule.Steps.Max(step => step.End), schedule.Finish);
    }

    private static bool Lies(DateTime moment, OpenPeriod period) =>
        moment.TimeOfDay >= TimeSpan.FromMinutes(period.From) && moment.TimeOfDay <= TimeSpan.FromMinutes(period.To);

    private static void Check(Schedule schedule, IEnumerable<ScheduledStep> order)
    {
        var plan = schedule.Plan;
        var draft = new PlanDraft
        {
            Situation = plan.Situation,
            Beliefs = plan.Beliefs,
            Steps = [.. order.Select((step, index) => Numbered(step.Step, index + 1))],
            Questions = plan.Questions,
            Cautions = plan.Cautions,
            Stops = plan.Stops,
        };
        Assert.Empty(PlanValidator.Violations(draft));
    }

    // Whatever could have ended before the next one starts comes first; the rest is free.
    private static IEnumerable<ScheduledStep> Shuffled(IReadOnlyList<ScheduledStep> steps, Random random)
    {
        var left = steps.ToList();
        while (left.Count > 0)
        {
            var soonest = left.Min(step => step.End);
            var able = left.Where(step => step.Start < soonest || step.End == soonest).ToList();
            var next = able[random.Next(able.Count)];
            left.Remove(next);
            yield return next;
        }
    }

    private static PlanStep Numbered(PlanStep step, int number) => new()
    {
        Id = step.Id,
        Number = number,
        Step = step.Step,
        Text = step.Text,
        Time = step.Time,
        Changes = step.Changes,
        After = step.After,
        Cautions = step.Cautions,
        Checks = step.Checks,
        Waits = step.Waits,
        Because = step.Because,
        Detail = step.Detail,
        Provisional = step.Provisional,
        Holds = step.Holds,
    };
}
