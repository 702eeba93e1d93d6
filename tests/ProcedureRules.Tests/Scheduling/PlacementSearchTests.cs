using FsCheck.Xunit;
using ProcedureRules.Scheduling;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

public class PlacementSearchTests
{
    private static readonly DateTime Morning = new(2026, 11, 25, 8, 0, 0);

    [Property(MaxTest = 150)]
    public void Best_RandomJob_KeepsOrderWaitsHandsPlacesAndHours(int seed)
    {
        var random = new Random(seed);
        var load = Loads.Random(random, random.Next(1, 50), random.Next(1, 5), hasBounds: true);

        Loads.AssertKept(load, Best(load, 2000), Calendar());
    }

    [Property(MaxTest = 100)]
    public void Best_OneTechnicianMore_IsNeverLater(int seed)
    {
        var random = new Random(seed);
        var load = Loads.Random(random, random.Next(1, 40), 4);

        var finishes = Enumerable.Range(1, 4).Select(technicians => Best(load.For(technicians), 1000).Finish).ToList();

        Assert.Equal(finishes.OrderDescending(), finishes);
    }

    [Property(MaxTest = 50)]
    public void Best_SameLoad_IsTheSamePlacement(int seed)
    {
        var load = Loads.Random(new Random(seed), 20, 2);
        Assert.Equal(Best(load, 1000).Starts, Best(load, 1000).Starts);
    }

    [Fact]
    public void Best_WaitThatWouldRunInOpenHours_IsPutOvernight()
    {
        // Ten hours of curing after the first half hour: the seven other hours of work fit before it, so that it runs at night.
        var load = Loads.Of([1800, 1800, 7 * 3600], [[], [new Lag(0, 10 * 3600)], []], technicians: 1);

        var placement = Best(load, 1000);

        Assert.Equal(24 * 3600 + 1800, placement.Finish);
    }

    [Fact]
    public void Best_WaitWithAMost_PutsTheStepItCountsFromOff()
    {
        // Sealant laid at the first moment would skin over while the second piece, which the third comes after, is still at work.
        var load = Loads.Of([300, 7200, 600], [[], [], [new Lag(0, 0), new Lag(1, 0)]], within: [[], [], [new Lag(0, 900)]]);

        var placement = Best(load, 1000);

        Assert.Equal(0, placement.Broken);
        Assert.InRange(placement.Starts[2] - placement.Ends[0], 0, 900);
        Assert.Equal(7800, placement.Finish);
    }

    [Fact]
    public void Best_WaitThatCannotBeKept_IsCounted()
    {
        var load = Loads.Of([300, 7200, 600], [[], [new Lag(0, 0)], [new Lag(1, 0)]], within: [[], [], [new Lag(0, 900)]]);

        Assert.Equal(1, Best(load, 1000).Broken);
    }

    [Fact]
    public void Best_Cancelled_Throws() =>
        Assert.Throws<OperationCanceledException>(() => PlacementSearch.Best(Loads.Random(new Random(1), 40, 2), Calendar(), 100_000, new CancellationToken(true)));

    private static WorkCalendar Calendar() => new(OpeningHours.Usual, Morning);

    private static Placement Best(WorkLoad load, int budget) => PlacementSearch.Best(load, Calendar(), budget, TestContext.Current.CancellationToken);
}
