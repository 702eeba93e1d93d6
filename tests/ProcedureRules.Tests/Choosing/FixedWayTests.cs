using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using ProcedureRules.Tests.ConsoleHost;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Choosing;

/// <summary>A technician fixes a way, and sees what it costs beside the others.</summary>
public class FixedWayTests
{
    [Fact]
    public void Choose_AWayOfThePlan_IsTakenAndSaysWhatTheOthersWouldCost()
    {
        var session = Shipped.Open("oil-pan");

        Assert.Empty(session.Choose("vehicle.height=raise_on_stands"));

        var plan = Shipped.PlanOf(session);
        Assert.Contains(plan.Steps, step => step.Step.Operation.Name == "raise_on_stands");
        var choice = Assert.Single(plan.Choices, choice => choice.IsFixed && choice.Id == "vehicle.height");
        Assert.Equal("raise_on_stands", choice.Ways[choice.Taken].Id);
        var lift = Assert.Single(choice.Ways, way => way.Id == "raise_on_lift");
        Assert.Contains("less", lift.WhyNot!.ToString(), StringComparison.Ordinal);
        Assert.True(lift.Labour!.Value.Midpoint < choice.Ways[choice.Taken].Labour!.Value.Midpoint);
    }

    [Fact]
    public void LeaveChoices_AfterAFixedWay_GivesThePlanAsItWas()
    {
        var session = Shipped.Open("oil-pan");
        var before = Text(session);
        session.Choose("vehicle.height=raise_on_stands");
        Assert.NotEqual(before, Text(session));

        session.LeaveChoices();

        Assert.Equal(before, Text(session));
    }

    [Fact]
    public void Choose_ThenAPartMore_StaysFixed()
    {
        var session = Shipped.Open("oil-pan");
        session.Choose("vehicle.height=raise_on_stands");

        Assert.Empty(session.State("part electric_fan=yes"));

        Assert.Contains(Shipped.PlanOf(session).Choices, choice => choice.IsFixed);
    }

    [Fact]
    public void Choose_AWayThatMayNotBeGone_StopsAndSaysWhy()
    {
        var session = Shipped.Open("oil-pan");

        Assert.Empty(session.Choose("engine.hold=hang_on_hoist"));

        Assert.Contains(Shipped.PlanOf(session).Stops, stop => stop.Text.ToString().Contains("may not be done", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("vehicle.hight=raise_on_lift", "nothing is chosen here by the name of 'vehicle.hight'; did you mean 'vehicle.height'?")]
    [InlineData("vehicle.height=raise_on_lfit", "'vehicle.height' has no way 'raise_on_lfit'; did you mean 'raise_on_lift'?")]
    [InlineData("vehicle.height", "'vehicle.height' does not say which way is taken; write CHOICE=WAY, as the plan prints them")]
    public void Choose_Misspelt_SaysTheNearest(string way, string message)
    {
        var session = Shipped.Open("oil-pan");
        var before = Text(session);

        var mistake = Assert.Single(session.Choose(way));

        Assert.Equal(("PR0706", message), (mistake.Code, mistake.Message));
        Assert.Equal(before, Text(session));
    }

    [Fact]
    public void Choose_EveryWayThatAShippedPlanPrices_GivesAPlanWithIt()
    {
        foreach (var order in new[] { "oil-pan", "engine-mount", "starter" })
            foreach (var choice in Shipped.Plan(order).Choices)
                foreach (var way in choice.Ways.Where(way => way.Labour is not null))
                {
                    var session = Shipped.Open(order);
                    Assert.Empty(session.Choose($"{choice.Id}={way.Id}"));
                    Assert.Contains(Shipped.PlanOf(session).Choices, other => other.Id == choice.Id && other.Ways[other.Taken].Id == way.Id);
                }
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void Plan_WayTaken_CostsWhatThePlanSays(string order)
    {
        var plan = Shipped.Plan(order);
        Assert.All(plan.Choices, choice => Assert.Equal(plan.Labour, choice.Ways[choice.Taken].Labour));
    }

    public static TheoryData<string> Orders => new(Shipped.Orders);

    [Fact]
    public void Plan_WithChoose_SaysThatItIsFixed()
    {
        var (exit, output, error) = RunHost.With("plan", RepositoryFiles.PathOf("samples", "jobs", "oil-pan.yaml"), "--choose", "vehicle.height=raise_on_stands");

        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("(fixed by you)", output.ReplaceLineEndings(" ").Replace("  ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Another way: --choose vehicle.height=raise_on_lift", output, StringComparison.Ordinal);
    }

    private static string Text(ProcedureSession session) =>
        string.Join('\n', PlanText.Lines(Shipped.PlanOf(session), UnitSystem.Us).Select(line => line.Text));
}
