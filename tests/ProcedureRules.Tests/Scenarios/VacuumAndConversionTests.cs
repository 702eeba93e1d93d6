using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Scenarios;

/// <summary>What a vacuum says before a charge, and a circuit that is converted from R-12 to R-134a.</summary>
/// <remarks>Figures of the vacuum hold (500 to 1000 micron steady, level above, or rising) and of the retrofit charge are common practice, no source.</remarks>
public class VacuumAndConversionTests
{
    [Theory]
    [InlineData("400 micron", "480 micron", "520 micron", "tight and dry")]
    [InlineData("500 micron", "800 micron", "900 micron", "tight and dry")]
    [InlineData("400 micron", "1200 micron", "1400 micron", "wet")]
    [InlineData("400 micron", "5000 micron", "6000 micron", "wet")]
    [InlineData("400 micron", "700 micron", "1000 micron", "leak")]
    [InlineData("400 micron", "2000 micron", "3600 micron", "leak")]
    [InlineData("400 micron", "20000 micron", "30000 micron", "leak")] // Above the vapour of water at 70 degF, 18791 micron (IAPWS-95).
    [InlineData("500 micron", "720 micron", "930 micron", "cannot tell")]
    public void Facts_OfAVacuumShutOff_TellWaterFromALeak(string atOnce, string after5, string after10, string verdict)
    {
        var plan = Shipped.Plan("recharge",
            "vehicle.ambient=70 degF", "ac_circuit.vacuum_gauge=electronic",
            $"ac_circuit.hold_at_once={atOnce}", $"ac_circuit.hold_after_5={after5}", $"ac_circuit.hold_after_10={after10}");
        var warnings = Step(plan, "charge(ac_circuit)").Cautions.Select(caution => caution.Text.ToString()).Where(text => text.Contains("Only into a vacuum", StringComparison.Ordinal));
        if (verdict == "tight and dry") Assert.Empty(warnings);
        else Assert.Contains($"Found so far: {verdict}.", Assert.Single(warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfANeedle_NeverTakesItForADryCircuit()
    {
        // 29.5 inHg of vacuum at sea level is about 10 700 micron: a needle cannot resolve 500.
        var plan = Shipped.Plan("recharge", "vehicle.ambient=70 degF", "vehicle.altitude=5000 ft", "ac_circuit.vacuum_gauge=needle");
        Assert.Contains(Step(plan, "evacuate(ac_circuit)").Cautions, caution => caution.Text.ToString().Contains("cannot tell 500 micron from 5000", StringComparison.Ordinal));
        Assert.Contains(Step(plan, "evacuate(ac_circuit)").Checks, check => check.Text.ToString().Contains("24.9 inHg vac", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("fit_fittings(ac_circuit)", "evacuate(ac_circuit)")]
    [InlineData("fit_cut_out(ac_circuit)", "evacuate(ac_circuit)")]
    [InlineData("prove_recovered(ac_circuit)", "fit_fittings(ac_circuit)")]
    [InlineData("renew_ac_part(drier)", "evacuate(ac_circuit)")]
    [InlineData("prove_cooling(ac_circuit)", "fill_in_label(ac_circuit)")]
    public void Plan_OfAConversion_KeepsItsOrder(string first, string second)
    {
        var plan = Shipped.Plan("convert");
        Assert.True(Step(plan, first).Number < Step(plan, second).Number);
    }

    [Fact]
    public void Plan_OfAConversionWithoutAMakersFigure_StartsAtFourFifthsByMass()
    {
        // 36 oz of R-12: 28.8 to 32.4 oz, common practice; 28.8 oz is 1.8 lb.
        var charge = Step(Shipped.Plan("convert"), "charge(ac_circuit)");
        Assert.Contains("1.8 lb", charge.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains(charge.Detail, line => line.ToString().Contains("never beyond 1.8..2.025 lb", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_OfAConversionWithAMakersFigure_AsksForIt()
    {
        var plan = Shipped.Plan("convert", "ac_circuit.retrofit_figure=given");
        Assert.Contains(plan.Questions, question => question.Id == "ac_circuit.capacity");
        Assert.NotEmpty(Step(plan, "charge(ac_circuit)").Holds);
    }

    [Fact]
    public void Plan_OfTrials_RemembersThemAndGoesBackToTheColdest()
    {
        var plan = Shipped.Plan("convert-trials");
        Assert.Contains(plan.Cautions, caution => caution.Text.ToString().Contains("Trials so far: 3. Coldest: second trial, 48 degF", StringComparison.Ordinal));
        Assert.Contains("1.925 lb", Step(plan, "charge(ac_circuit)").Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfATrialThatWasColderForMore_GoesOn()
    {
        var plan = Shipped.Plan("convert-trials", "third_trial.vent=46 degF");
        Assert.DoesNotContain(plan.Cautions, caution => caution.Text.ToString().Contains("makes the vent no colder", StringComparison.Ordinal));
    }

    private static PlanStep Step(Plan plan, string id) => plan.Steps.FirstOrDefault(step => step.Id == id)
        ?? throw new Xunit.Sdk.XunitException($"no step {id} in: {string.Join(", ", plan.Steps.Select(step => step.Id))}");
}
