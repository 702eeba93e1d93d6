using ProcedureRules.Scheduling;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

/// <summary>The shipped jobs in the shipped shop.</summary>
public class ShippedScheduleTests
{
    public static TheoryData<string> Orders => [.. Shipped.Orders];

    [Theory]
    [MemberData(nameof(Orders))]
    public void Schedule_ShippedJob_IsKeptAndValidInEveryOrder(string order)
    {
        var plan = Shipped.Plan(order);
        foreach (var shop in new[] { Workshop.Usual, PlanSchedules.Pair, DemoShop() })
        {
            var schedule = Scheduler.Schedule(plan, shop, PlanSchedules.Morning, TestContext.Current.CancellationToken);

            Assert.Equal(plan.Steps.Select(step => step.Id).Order(), schedule.Steps.Select(step => step.Step.Id).Order());
            Assert.Empty(schedule.UnkeptWaits);
            // The labour of a plan and of its schedule is one: the time of all people that each step takes.
            Assert.InRange(schedule.Labour.Low.TotalSeconds, plan.Labour.Low - plan.Steps.Count, plan.Labour.Low + plan.Steps.Count);
            Assert.InRange(schedule.Labour.High.TotalSeconds, plan.Labour.High - plan.Steps.Count, plan.Labour.High + plan.Steps.Count);
            PlanSchedules.AssertKept(schedule);
            PlanSchedules.AssertValidInEveryOrder(schedule, new Random(3));
        }
    }

    [Fact]
    public void Schedule_OilPan_DripsOvernightAndNamesWhatItWaitsFor()
    {
        var schedule = Scheduler.Schedule(Shipped.Plan("oil-pan"), Workshop.Usual, PlanSchedules.Morning, TestContext.Current.CancellationToken);

        var clean = schedule.Steps.First(step => step.Step.Waits.Any(wait => wait.AfterStep is not null));
        var off = schedule.Steps.Single(step => step.Step.Id == clean.Step.Waits[0].AfterStep);
        Assert.Equal(off.Start.Date.AddDays(1), clean.Start.Date);
        Assert.Contains(new ChainLink(clean.Step.Id, ChainCause.Wait), schedule.CriticalChain);
        Assert.Contains(schedule.Preparations, preparation => preparation is { Kind: PreparationKind.Helper, IsSure: true });
    }

    [Fact]
    public void Schedule_ShopFile_IsReadWithoutMistakes()
    {
        var shop = DemoShop();

        Assert.Equal(2, shop.Technicians);
        Assert.Equal(1, shop.Places["under"]);
        Assert.Empty(shop.Hours.On(new DateOnly(2026, 12, 25)));
        Assert.Equal(new OpenPeriod((12 * 60) + 45, 17 * 60), shop.Hours.On(new DateOnly(2026, 11, 25))[1]);
        Assert.DoesNotContain("heat", shop.Alone!);
    }

    private static Workshop DemoShop()
    {
        var read = ShopFile.Read(RepositoryFiles.PathOf("samples", "shop.yaml"), Shipped.Engine.Vocabulary);
        Assert.Empty(read.Diagnostics);
        return read.Shop!;
    }
}
