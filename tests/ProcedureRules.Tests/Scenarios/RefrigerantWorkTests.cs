using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Scenarios;

/// <summary>Work on a refrigerant circuit: what comes before what, what is never done, and what need not be opened.</summary>
/// <remarks>The order of work is common practice, no source, except where a test names one.</remarks>
public class RefrigerantWorkTests
{
    private static readonly string[] OfTheCircuit = ["recover", "open_joint", "take_seal_out", "evacuate", "hold_vacuum", "charge"];

    [Theory]
    [InlineData("search_shaft_leak(shaft_seal)", "recover(ac_circuit)")]
    [InlineData("recover(ac_circuit)", "prove_recovered(ac_circuit)")]
    [InlineData("prove_recovered(ac_circuit)", "weigh_out(ac_circuit)")]
    [InlineData("weigh_out(ac_circuit)", "open_joint(compressor)")]
    [InlineData("weigh_out(ac_circuit)", "take_seal_out(shaft_seal)")]
    [InlineData("remove_hub(clutch_hub)", "take_seal_out(shaft_seal)")]
    [InlineData("put_seal_in(shaft_seal)", "fit_hub(clutch_hub)")]
    [InlineData("fit_hub(clutch_hub)", "set_gap(clutch_hub)")]
    [InlineData("set_gap(clutch_hub)", "prove_cooling(ac_circuit)")]
    [InlineData("close_joint(compressor)", "open_joint(drier)")]
    [InlineData("renew_ac_part(drier)", "settle_oil(ac_circuit)")]
    [InlineData("settle_oil(ac_circuit)", "close_joint(drier)")]
    [InlineData("close_joint(drier)", "evacuate(ac_circuit)")]
    [InlineData("evacuate(ac_circuit)", "hold_vacuum(ac_circuit)")]
    [InlineData("hold_vacuum(ac_circuit)", "charge(ac_circuit)")]
    [InlineData("charge(ac_circuit)", "check_tightness(ac_circuit)")]
    [InlineData("check_tightness(ac_circuit)", "prove_cooling(ac_circuit)")]
    public void Plan_OfAShaftSeal_KeepsTheOrderOfTheTrade(string first, string second)
    {
        var plan = Shipped.Plan("shaft-seal");
        Assert.True(NumberOf(plan, first) < NumberOf(plan, second), $"{first} is {NumberOf(plan, first)}, {second} is {NumberOf(plan, second)}");
    }

    [Fact]
    public void Plan_OfEveryOpenedCircuit_OpensItOnlyBetweenProvedEmptyAndEvacuated()
    {
        // Source: 42 USC 7671g(c): no knowing release while servicing.
        foreach (var order in Shipped.Orders)
        {
            var plan = Shipped.Plan(order);
            var opened = plan.Steps.Where(step => step.Step.Operation.Name is "open_joint" or "take_seal_out" or "close_joint" or "put_seal_in").ToList();
            if (opened.Count == 0) continue;
            var emptied = plan.Steps.FirstOrDefault(step => step.Id == "prove_recovered(ac_circuit)")?.Number ?? 0;
            Assert.All(opened, step => Assert.InRange(step.Number, emptied + 1, NumberOf(plan, "evacuate(ac_circuit)") - 1));
            Assert.Contains(plan.Steps, step => step.Id == "renew_ac_part(drier)");
        }
    }

    [Fact]
    public void Plan_OfRecovering_WaitsFiveMinutesAndLooksAgain()
    {
        // Source: SAE J1989 and J2211, from memory: five minutes, and again if the pressure returns.
        var again = Shipped.Plan("recharge").Steps.Single(step => step.Id == "prove_recovered(ac_circuit)");
        Assert.Contains(again.Waits, wait => wait.Least?.ToString() == "5 min");
    }

    [Fact]
    public void Plan_OfAnUnknownCharge_AsksForItAndHolds()
    {
        var plan = Shipped.Plan("recharge");
        Assert.Contains(plan.Questions, question => question.Id == "ac_circuit.capacity" && question.How!.ToString().Contains("label under the bonnet", StringComparison.Ordinal));
        Assert.Contains(Step(plan, "charge(ac_circuit)").Holds, hold => hold.Text.ToString().Contains("capacity", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_OfAClutchGap_LeavesTheCircuitClosed()
    {
        var plan = Shipped.Plan("clutch-gap");
        Assert.DoesNotContain(plan.Steps, step => OfTheCircuit.Contains(step.Step.Operation.Name));
        Assert.Contains(plan.Steps, step => step.Id == "take_out_hub_shim(clutch_hub)");
        Assert.DoesNotContain(plan.Steps, step => step.Id == "add_hub_shim(clutch_hub)");
    }

    [Theory]
    [InlineData("20 thou", "21 thou", "22 thou", null)]
    [InlineData("10 thou", "11 thou", "12 thou", "add_hub_shim(clutch_hub)")]
    [InlineData("40 thou", "41 thou", "42 thou", "take_out_hub_shim(clutch_hub)")]
    [InlineData("12 thou", "28 thou", "45 thou", null)]
    public void Plan_OfMeasuredGaps_ShimsTheRightWay(string first, string second, string third, string? shimming)
    {
        var plan = Shipped.Plan("clutch-gap", $"clutch_hub.gap_1={first}", $"clutch_hub.gap_2={second}", $"clutch_hub.gap_3={third}");
        var found = plan.Steps.Select(step => step.Id).Where(id => id.EndsWith("_shim(clutch_hub)", StringComparison.Ordinal));
        Assert.Equal(shimming is null ? [] : [shimming], found);
    }

    [Fact]
    public void Plan_OfAnUnknownGap_NeverInventsTheMakersFigure()
    {
        var plan = Shipped.Plan("clutch-gap", "clutch_hub.gap_least=unknown", "clutch_hub.gap_most=unknown");
        Assert.Contains(plan.Questions, question => question.Id == "clutch_hub.gap_least");
        Assert.Contains(plan.Questions, question => question.Id == "clutch_hub.gap_most");
        Assert.NotEmpty(Step(plan, "set_gap(clutch_hub)").Holds);
    }

    [Fact]
    public void Plan_OfACircuitThatIsEmptyAndOpen_RecoversNothing()
    {
        var plan = Shipped.Plan("compressor-begun");
        Assert.DoesNotContain(plan.Steps, step => step.Step.Operation.Name is "recover" or "prove_recovered" or "weigh_out");
        Assert.True(NumberOf(plan, "close_joint(compressor)") < NumberOf(plan, "evacuate(ac_circuit)"));
        Assert.True(NumberOf(plan, "evacuate(ac_circuit)") < NumberOf(plan, "charge(ac_circuit)"));
    }

    [Fact]
    public void Plan_OfAnotherCompressor_LooksAtTheMeteringDeviceAndMeasuresTheOldOil()
    {
        var plan = Shipped.Plan("compressor");
        Assert.True(NumberOf(plan, "inspect_metering(metering_device)") < NumberOf(plan, "fit_compressor(compressor)"));
        Assert.True(NumberOf(plan, "measure_old_oil(compressor)") < NumberOf(plan, "renew_compressor(compressor)"));
    }

    [Theory]
    [InlineData("disconnect_gauges(ac_circuit)", "lay_compressor_aside(compressor)")]
    [InlineData("lay_compressor_aside(compressor)", "free_line_slack(refrigerant_lines)")]
    [InlineData("free_line_slack(refrigerant_lines)", "raise_engine(engine)")]
    [InlineData("lower_engine(engine)", "restore_line_slack(refrigerant_lines)")]
    [InlineData("restore_line_slack(refrigerant_lines)", "set_compressor_back(compressor)")]
    public void Plan_OfARaisedEngine_LaysTheCompressorAsideWithItsLinesOn(string first, string second)
    {
        var plan = Shipped.Plan("pan-and-cooling");
        Assert.True(NumberOf(plan, first) < NumberOf(plan, second), $"{first} is {NumberOf(plan, first)}, {second} is {NumberOf(plan, second)}");
        Assert.DoesNotContain(plan.Steps, step => OfTheCircuit.Contains(step.Step.Operation.Name));
    }

    [Fact]
    public void Plan_OfAChipThrower_FlushesBeforeAnythingIsJoined()
    {
        var plan = Shipped.Plan("compressor", "condenser.tubes=flat");
        var flushed = NumberOf(plan, "flush_lines(compressor)");
        Assert.All(plan.Steps.Where(step => step.Step.Operation.Name == "close_joint"), step => Assert.True(step.Number > flushed));
        Assert.True(NumberOf(plan, "inspect_metering(metering_device)") < flushed);
        Assert.Contains(plan.Steps, step => step.Id == "renew_ac_part(condenser)");
    }

    [Fact]
    public void Plan_OfAHoledCondenser_RecoversNothingAndStillEvacuates()
    {
        var plan = Shipped.Plan("condenser");
        Assert.DoesNotContain(plan.Steps, step => step.Step.Operation.Name == "recover");
        Assert.True(NumberOf(plan, "close_joint(drier)") < NumberOf(plan, "evacuate(ac_circuit)"));
    }

    [Fact]
    public void Plan_OfABlend_KeepsItOutOfTheCleanMachine()
    {
        // Source: SAE J2099: less than 98 % of one refrigerant is not recycled.
        var plan = Shipped.Plan("blend");
        Assert.Contains(plan.Tools, tool => tool.Text.ToString().Contains("kept for mixed refrigerant", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Tools, tool => tool.Text.ToString().Contains("certified for this refrigerant", StringComparison.Ordinal));
        Assert.Contains(Step(plan, "recover(ac_circuit)").Cautions, caution => caution.Text.ToString().Contains("reclaimer", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("blend", true)]
    [InlineData("compressor", false)]
    public void Plan_OfR1234yf_WarnsOfFire(string order, bool burns)
    {
        // Source: ISO 817, class A2L, from memory.
        Assert.Equal(burns, Step(Shipped.Plan(order), "connect_gauges(ac_circuit)").Cautions.Any(caution => caution.Text.ToString().Contains("mildly flammable", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_OfPortsOfTwoKinds_Stops()
    {
        // Source: 40 CFR 82 subpart G, appendix H: a fitting for each refrigerant.
        var plan = Shipped.Plan("recharge", "ac_circuit.ports=mixed");
        Assert.Empty(plan.Steps);
        Assert.Contains(plan.Stops, stop => stop.IsSure && stop.Reason.Text.ToString().Contains("made for two refrigerants", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_OfAHybridsCompressor_IsLeftToThoseEquippedForIt()
    {
        // Source: 49 CFR 571.305 S3: above 60 V d.c. is high voltage.
        var plan = Shipped.Plan("compressor", "compressor.kind=electric");
        Assert.Contains(plan.Stops, stop => stop.Reason.Text.ToString().Contains("high voltage", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("ac_circuit.ports=mixed")]
    [InlineData("ac_circuit.ports=unknown")]
    [InlineData("compressor.kind=electric")]
    public void Plan_OfWorkThatOpensNothing_IsNotStoppedByTheCircuit(string statement) =>
        Assert.NotEmpty(Shipped.Plan("clutch-gap", statement).Steps);

    [Theory]
    [InlineData("connect_gauges(ac_circuit)", "freezes")]
    [InlineData("connect_gauges(ac_circuit)", "pit")]
    [InlineData("connect_gauges(ac_circuit)", "compressed air")]
    [InlineData("connect_gauges(ac_circuit)", "flame")]
    [InlineData("recover(ac_circuit)", "The law forbids letting refrigerant go")]
    [InlineData("recover(ac_circuit)", "80 %")]
    [InlineData("open_joint(compressor)", "freezes")]
    [InlineData("prove_cooling(ac_circuit)", "Exhaust gas kills")]
    public void Plan_OfRefrigerant_CarriesItsCautions(string step, string words)
    {
        Assert.Contains(Step(Shipped.Plan("compressor"), step).Cautions, caution => caution.Text.ToString().Contains(words, StringComparison.Ordinal));
    }

    private static PlanStep Step(Plan plan, string id) => plan.Steps.FirstOrDefault(step => step.Id == id)
        ?? throw new Xunit.Sdk.XunitException($"no step {id} in: {string.Join(", ", plan.Steps.Select(step => step.Id))}");

    private static int NumberOf(Plan plan, string id) => Step(plan, id).Number;
}
