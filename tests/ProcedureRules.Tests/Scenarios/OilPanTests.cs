using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Scenarios;

/// <summary>The main job: a pan that will not drop until the engine is raised, and the same job where it drops freely.</summary>
/// <remarks>The order of work is common practice, no source, except where a test names one.</remarks>
public class OilPanTests
{
    private readonly Plan _plan = Shipped.Plan("oil-pan");

    [Theory]
    [InlineData("drain_oil(engine)", "unbolt_pan(oil_pan)")]
    [InlineData("free_mount(left_mount)", "raise_engine(engine)")]
    [InlineData("free_mount(right_mount)", "raise_engine(engine)")]
    [InlineData("steady_vehicle(vehicle)", "raise_engine(engine)")]
    [InlineData("remove_fan(fan)", "raise_engine(engine)")]
    [InlineData("remove_starter(starter)", "remove_dust_cover(dust_cover)")]
    [InlineData("remove_dust_cover(dust_cover)", "drop_pan(oil_pan)")]
    [InlineData("raise_engine(engine)", "drop_pan(oil_pan)")]
    [InlineData("disconnect_ground(battery)", "remove_starter(starter)")]
    [InlineData("fit_starter(starter)", "connect_ground(battery)")]
    public void Plan_OfTheDemo_KeepsTheOrderOfTheTrade(string first, string second)
    {
        Assert.True(NumberOf(first) < NumberOf(second), $"{first} is {NumberOf(first)}, {second} is {NumberOf(second)}");
    }

    [Fact]
    public void Plan_OfADentedPan_NeverCarriesTheEngineOnIt()
    {
        Assert.DoesNotContain(_plan.Steps, step => step.Step.Operation.Name == "jack_under_pan");
        Assert.Contains(_plan.Steps, step => step.Cautions.Any(caution => caution.Text.ToString().Contains("Not under the oil pan", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_OfARaisedEngine_BlocksItBeforeAnyoneReachesIn()
    {
        Assert.True(NumberOf("raise_engine(engine)") < NumberOf("block_engine(engine)"));
        Assert.True(NumberOf("block_engine(engine)") < NumberOf("drop_pan(oil_pan)"));
    }

    [Fact]
    public void Plan_OfTheDemo_TakesTheGroundCableOffFirstAndOnLast()
    {
        // Source: TM 9-6115-639-13 and TM 9-2350-311-20-1: ground off first, on last.
        var electrical = _plan.Steps.Where(step => step.Step.Operation.Energies.Contains("electrical") && step.Step.Operation.Name is not ("disconnect_ground" or "connect_ground" or "run_engine")).ToList();
        Assert.NotEmpty(electrical);
        Assert.All(electrical, step => Assert.InRange(step.Number, NumberOf("disconnect_ground(battery)"), NumberOf("connect_ground(battery)")));
    }

    [Fact]
    public void Plan_OfTheDemo_LetsTheOilDripBeforeTheNewSeal()
    {
        Assert.Contains(_plan.Steps, step => step.Waits.Any(wait => wait.Text.ToString().Contains("drip", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_OfARoomyPickup_RaisesNothing()
    {
        var plan = Shipped.Plan("oil-pan-pickup");
        string[] ofRaising = ["raise_engine", "free_mount", "remove_fan", "remove_starter", "steady_vehicle", "disconnect_ground", "block_engine"];
        Assert.DoesNotContain(plan.Steps, step => ofRaising.Contains(step.Step.Operation.Name));
        Assert.Contains(plan.Steps, step => step.Id == "renew_pan(oil_pan)");
    }

    [Fact]
    public void Plan_OfEveryPartTakenOff_PutsItBackOnce()
    {
        foreach (var order in Shipped.Orders)
        {
            var plan = Shipped.Plan(order);
            foreach (var group in plan.Steps.Where(step => step.Step.Operation.UndoneBy is not null).GroupBy(step => step.Step))
            {
                var undo = plan.Steps.Count(step => step.Step.Part == group.Key.Part && step.Step.Operation == group.Key.Operation.UndoneBy);
                Assert.True(undo == group.Count(), $"{order}: {group.Key} {group.Count()} times, undone {undo} times");
            }
        }
    }

    private int NumberOf(string id) => _plan.Steps.FirstOrDefault(step => step.Id == id)?.Number
        ?? throw new Xunit.Sdk.XunitException($"no step {id} in: {string.Join(", ", _plan.Steps.Select(step => step.Id))}");
}
