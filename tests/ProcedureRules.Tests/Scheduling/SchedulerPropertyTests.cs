using FsCheck.Xunit;
using ProcedureRules.Plans;
using ProcedureRules.Scheduling;
using ProcedureRules.Tests.Planning;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

public class SchedulerPropertyTests
{
    [Property(MaxTest = 200)]
    public void Schedule_RandomWorld_PassesThePlansCheckInEveryOrder(byte[] bytes, int seed)
    {
        if (RandomShop.From(bytes).Try().Plan is not { Stops.Count: 0 } plan) return;

        var schedule = Of(plan, PlanSchedules.Pair with { Technicians = 3 });

        PlanSchedules.AssertKept(schedule);
        PlanSchedules.AssertValidInEveryOrder(schedule, new Random(seed));
    }

    [Property(MaxTest = 60)]
    public void Schedule_MoreTechnicians_NeverFinishLater(byte[] bytes)
    {
        if (RandomShop.From(bytes).Try().Plan is not { } plan) return;

        var finishes = Enumerable.Range(1, 4).Select(technicians => Of(plan, PlanSchedules.Pair with { Technicians = technicians }).Finish).ToList();

        Assert.Equal(finishes.OrderDescending(), finishes);
    }

    [Fact]
    public void Schedule_RandomWorlds_AreOftenShorterWithThreeTechnicians()
    {
        // The properties above would hold of a scheduler that never lets two work side by side.
        var random = new Random(7);
        var shorter = 0;
        for (var i = 0; i < 120; i++)
        {
            var bytes = new byte[random.Next(20, 80)];
            random.NextBytes(bytes);
            if (RandomShop.From(bytes).Try().Plan is not { Steps.Count: > 6 } plan) continue;
            if (Of(plan, PlanSchedules.Pair with { Technicians = 3 }).Elapsed.Likely < 0.8 * Of(plan, Workshop.Usual).Elapsed.Likely) shorter++;
        }
        Assert.InRange(shorter, 10, 120);
    }

    [Property(MaxTest = 60)]
    public void Schedule_OneTechnicianWithoutWaits_KeepsTheOrderOfThePlanWhereADayIsEnough(byte[] bytes)
    {
        if (RandomShop.From(bytes).Try().Plan is not { } plan) return;

        var schedule = Of(plan, Workshop.Usual);

        if (schedule.Finish.Date == PlanSchedules.Morning.Date) Assert.Equal(plan.Ids(), schedule.Steps.Select(step => step.Step.Id));
    }

    private static Schedule Of(Plan plan, Workshop shop) =>
        Scheduler.Schedule(plan, shop, PlanSchedules.Morning, TestContext.Current.CancellationToken);
}
