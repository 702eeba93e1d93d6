using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Scenarios;

/// <summary>A wobbling crank pulley, the belt that comes back on, and bolts whose figure nobody states.</summary>
/// <remarks>What can be straightened, and the order of work: common practice, no source.</remarks>
public class FrontDriveTests
{
    private const string Order = "true-crank-pulley";

    [Fact]
    public void Truing_ABentPressedPulley_StraightensAndProvesItBeforeTheEngineRuns()
    {
        var plan = Shipped.Plan(Order);
        string[] expected = ["measure_runout(crank_pulley)", "remove_crank_pulley(crank_pulley)", "straighten_crank_pulley(crank_pulley)", "fit_crank_pulley(crank_pulley)", "tighten_small_bolts(crank_pulley)", "prove_runout(crank_pulley)", "run_engine(engine)"];
        Assert.Equal(expected, plan.Steps.Select(step => step.Id).Where(expected.Contains));
        Assert.DoesNotContain(plan.Steps, step => step.Id == "renew_crank_pulley(crank_pulley)");
    }

    [Theory]
    [InlineData("crank_pulley.damage=cracked")]
    [InlineData("crank_pulley.made_of=cast_iron")]
    [InlineData("crank_pulley.made_of=rubber_damper")]
    public void Truing_WhatDoesNotBendBack_RenewsIt(string statement)
    {
        var plan = Shipped.Plan(Order, statement);
        Assert.Contains(plan.Steps, step => step.Id == "renew_crank_pulley(crank_pulley)");
        Assert.DoesNotContain(plan.Steps, step => step.Id == "straighten_crank_pulley(crank_pulley)");
    }

    [Fact]
    public void Truing_APulleyThatRunsTrueEnough_LeavesItOn()
    {
        var plan = Shipped.Plan(Order, "crank_pulley.damage=none", "crank_pulley.runout=0.01 in");
        Assert.DoesNotContain(plan.Steps, step => step.Id == "remove_crank_pulley(crank_pulley)");
        Assert.Contains(plan.Steps, step => step.Id == "prove_runout(crank_pulley)");
    }

    [Fact]
    public void Truing_WithoutTheMakersLimit_HoldsAndAsks()
    {
        var plan = Shipped.Plan(Order, "crank_pulley.runout_limit=unknown");
        Assert.Contains(plan.Questions, question => question.Id == "crank_pulley.runout_limit");
        Assert.NotEmpty(plan.Steps.Single(step => step.Id == "prove_runout(crank_pulley)").Holds);
    }

    [Fact]
    public void Belt_OnAFixedBracket_GetsItsDeflectionAndItsBoltsTightenedAfterIt()
    {
        // Source: TM 5-4310-339-15: 1/64 in of deflection for each inch of span; 16 in of span give 1/4 in.
        var plan = Shipped.Plan(Order);
        var (belt, bolts) = (plan.Steps.Single(step => step.Id == "fit_belt(fan_belt)"), plan.Steps.Single(step => step.Id == "tighten_plain_bolts(belt_bracket_bolts)"));
        Assert.Contains(belt.Detail, line => line.ToString().Contains("about 0.25 in", StringComparison.Ordinal));
        Assert.True(belt.Number < bolts.Number);
    }

    [Fact]
    public void PlainBolts_WithoutAStatedFigure_GetTheGeneralChartLabelledAsSuch()
    {
        // Source: 3/8-16 grade 5, published nut factors of zinc 0.17 to 0.35, clamp 75 % of the proof load: 26.2 to 54.0 lb.ft.
        var bolts = Shipped.Plan(Order).Steps.Single(step => step.Id == "tighten_plain_bolts(belt_bracket_bolts)");
        Assert.Empty(bolts.Holds);
        Assert.Contains(bolts.Detail, line => line.ToString().Contains("GENERAL CHART, not a figure of this joint: 26.24..54.04 lb.ft", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("90 lb.ft", true)]
    [InlineData("45 lb.ft", false)]
    public void MountBolts_WithAFigureAboveTheGeneralChart_AreReadAgain(string torque, bool isWarned)
    {
        var plan = Shipped.Plan("engine-mount-bolts", $"right_mount.bolt_torque={torque}");
        var fasten = plan.Steps.Single(step => step.Id == "fasten_top_mount(right_mount)");
        Assert.Equal(isWarned, fasten.Cautions.Any(caution => caution.Text.ToString().Contains("The general chart gives these bolts", StringComparison.Ordinal)));
    }

    [Fact]
    public void CrankHubBolt_WithoutAStatedFigure_HoldsWhateverAnyChartSays()
    {
        var plan = Shipped.Plan("crank-pulley");
        Assert.NotEmpty(plan.Steps.Single(step => step.Id == "tighten_hub_bolt(crank_pulley)").Holds);
    }
}
