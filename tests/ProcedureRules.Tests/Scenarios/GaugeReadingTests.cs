using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Scenarios;

/// <summary>What gauge readings can mean and cannot.</summary>
/// <remarks>
/// Saturation figures: Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657-729, as tabulated in 5 degF steps. What fits which row is common
/// practice, no source.
/// </remarks>
public class GaugeReadingTests
{
    /// <summary>Gauges, all else known, on a day of 80 degF: R-134a boils at 41 degF at 36 psi and at 5 degF at 9 psi, and condenses at 125 degF at 185 psi.</summary>
    private static readonly Dictionary<string, string> LowSides = new() { ["vacuum"] = "10 inHg vac", ["low"] = "9 psi", ["normal"] = "36 psi", ["high"] = "70 psi" };
    private static readonly Dictionary<string, string> HighSides = new() { ["low"] = "95 psi", ["normal"] = "185 psi", ["high"] = "300 psi" };

    public static TheoryData<string, string, string, string> Rows()
    {
        var rows = new TheoryData<string, string, string, string>();
        foreach (var low in LowSides.Keys)
            foreach (var high in HighSides.Keys)
                foreach (var compressor in (string[])["fixed", "variable"])
                    foreach (var metering in (string[])["orifice_tube", "expansion_valve"])
                        rows.Add(low, high, compressor, metering);
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Findings_OfEveryPairOfLevels_NameRivalsAndWhatContradictsOthers(string low, string high, string compressor, string metering)
    {
        var plan = Read(low, high, compressor, metering);
        Assert.Contains(plan.Findings, finding => finding.Verdict == Truth.Unknown && finding.For.Count > 0);
        Assert.Contains(plan.Findings, finding => finding.Verdict == Truth.Unknown && finding.For.Count == 0 && finding.Against.Count > 0);
        Assert.DoesNotContain(plan.Findings, finding => finding.Verdict == Truth.Yes);

        // Nothing is opened or added to find out what is wrong.
        string[] ofTheCircuit = ["recover", "open_joint", "take_seal_out", "evacuate", "charge"];
        Assert.DoesNotContain(plan.Steps, step => ofTheCircuit.Contains(step.Step.Operation.Name));
    }

    [Fact]
    public void Findings_OfAllPairs_HearEveryRuleOfThePairs()
    {
        var text = File.ReadAllText(RepositoryFiles.PathOf("rules", "gauge_pairs.yaml"));
        var ofPairs = text[text.IndexOf("# Both sides together", StringComparison.Ordinal)..text.IndexOf("# With time", StringComparison.Ordinal)];
        var written = ofPairs.Split('\n').Where(line => line.StartsWith("  - rule: ", StringComparison.Ordinal)).Select(line => line["  - rule: ".Length..].Trim()).ToHashSet();
        var session = Shipped.Open("no-difference");
        foreach (var row in Rows())
        {
            foreach (var hub in (string[])["turns", "cycles"])
            {
                foreach (var statement in Statements(row.Data.Item1, row.Data.Item2, row.Data.Item3, row.Data.Item4).Append($"ac_circuit.hub={hub}")) session.State(statement);
                var findings = Shipped.PlanOf(session).Findings;
                written.ExceptWith(findings.SelectMany(finding => finding.For.Concat(finding.Against)).Select(reason => reason.Rule));
            }
        }
        Assert.Empty(written);
    }

    [Theory]
    [InlineData("high", "low", "does_not_pump")]
    [InlineData("high", "high", "no_air_outside")]
    [InlineData("high", "high", "too_much")]
    [InlineData("high", "high", "air_inside")]
    [InlineData("low", "low", "too_little")]
    [InlineData("low", "high", "high_side_blocked")]
    [InlineData("vacuum", "normal", "blocked")]
    [InlineData("normal", "high", "no_air_outside")]
    [InlineData("normal", "normal", "heat_gets_in")]
    [InlineData("normal", "low", "too_little")]
    [InlineData("high", "normal", "stays_open")]
    [InlineData("low", "normal", "no_air_inside")]
    public void Findings_OfAPair_SpeakForWhatFits(string low, string high, string cause) =>
        Assert.NotEmpty(Finding(Read(low, high, "fixed", "orifice_tube"), cause).For);

    [Theory]
    [InlineData("high", "low", "too_little")]
    [InlineData("high", "high", "too_little")]
    [InlineData("high", "high", "does_not_pump")]
    [InlineData("vacuum", "high", "too_little")]
    [InlineData("low", "low", "too_much")]
    [InlineData("normal", "normal", "does_not_pump")]
    public void Findings_OfAPair_SpeakAgainstWhatDoesNotFit(string low, string high, string cause)
    {
        var finding = Finding(Read(low, high, "fixed", "expansion_valve"), cause);
        Assert.Empty(finding.For);
        Assert.NotEmpty(finding.Against);
    }

    [Theory]
    [InlineData("high", "low", "small_stroke")]
    [InlineData("low", "normal", "full_stroke")]
    public void Findings_OfAVariableCompressor_NameItsValve(string low, string high, string cause)
    {
        Assert.NotEmpty(Finding(Read(low, high, "variable", "orifice_tube"), cause).For);
        Assert.DoesNotContain(Read(low, high, "fixed", "orifice_tube").Findings, finding => finding.Cause.Name == cause);
    }

    [Theory]
    [InlineData("high", "high", "condenser.air")]
    [InlineData("normal", "high", "condenser.air")]
    [InlineData("low", "low", "ac_circuit.suction_line")]
    [InlineData("low", "normal", "ac_circuit.suction_line")]
    [InlineData("normal", "normal", "evaporator.air")]
    [InlineData("high", "low", "ac_circuit.set_valves")]
    public void TellingChecks_OfAPair_BeginWithTheCheapestThatOpensNothing(string low, string high, string question)
    {
        Assert.Equal(question, Read(low, high, "fixed", "orifice_tube").TellingChecks[0].Id);
    }

    [Theory]
    [InlineData("ac_circuit.liquid_line=100 degF", "blocked", "too_little")] // Condenses at 125 degF: dammed up.
    [InlineData("ac_circuit.liquid_line=90 degF", "blocked", "too_little")]
    [InlineData("ac_circuit.suction_line=60 degF", "blocked", "no_air_inside")] // Boils at 5 degF: hungry.
    public void Findings_OfTwoTemperaturesMore_TellABlockFromItsRivals(string reading, string left, string ruledOut)
    {
        var plan = Read("low", "normal", "fixed", "expansion_valve", "ac_circuit.high_side=190 psi", reading);
        Assert.NotEmpty(Finding(plan, left).For);
        Assert.Equal(Truth.No, Finding(plan, ruledOut).Verdict);
    }

    [Fact]
    public void Findings_OfNoLiquidBehindTheCondenser_AreSureThatRefrigerantIsMissing()
    {
        // 95 psig of R-134a condense at 85 degF.
        var plan = Read("low", "low", "fixed", "orifice_tube", "ac_circuit.liquid_line=85 degF", "ac_circuit.suction_line=70 degF");
        Assert.Equal(Truth.Yes, Finding(plan, "too_little").Verdict);
    }

    [Theory]
    [InlineData("r12", "36.9 psi", "157.3 psi")] // Marx, Pruss and Wagner (1992): 40 and 120 degF.
    [InlineData("r134a", "35 psi", "171.2 psi")] // Tillner-Roth and Baehr (1994).
    [InlineData("r1234yf", "38.4 psi", "169.2 psi")] // Lemmon and Akasaka (2022).
    public void Findings_OfTheSameTemperatures_AreTheSameForEachRefrigerant(string refrigerant, string low, string high)
    {
        var plan = Shipped.Plan("no-difference",
            $"ac_circuit.identified={refrigerant}", $"ac_circuit.ports={refrigerant}", $"ac_circuit.label_refrigerant={refrigerant}",
            $"ac_circuit.low_side={low}", $"ac_circuit.high_side={high}");
        Assert.Contains(Finding(plan, "heat_gets_in").For, reason => reason.Text.ToString().StartsWith("Both sides look normal", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("70 degF", "55 psi", true)] // 58 degF is much for an evaporator on a mild day,
    [InlineData("100 degF", "55 psi", false)] // and usual on a hot one.
    public void Findings_OfALowSide_FollowTheDay(string ambient, string low, bool isHigh)
    {
        var plan = Read("normal", "normal", "fixed", "expansion_valve", $"vehicle.ambient={ambient}", $"ac_circuit.low_side={low}", "ac_circuit.rested=no");
        Assert.Equal(isHigh, plan.Findings.Any(finding => finding.Cause.Name == "stays_open" && finding.For.Count > 0));
    }

    [Fact]
    public void Findings_OfFrostOnALineThatReadsWarm_BlameTheGauge()
    {
        // 46 psig of R-134a belong to 50 degF, and frost forms at 32 degF or below.
        var plan = Shipped.Plan("lying-gauge");
        Assert.Equal(Truth.Yes, Finding(plan, "low_gauge_lies").Verdict);
        Assert.Contains(plan.Steps, step => step.Step.Operation.Name == "try_other_gauge");
        Assert.DoesNotContain(plan.Findings, finding => finding.Cause.Name is "too_little" or "does_not_pump" && finding.For.Count > 0);
    }

    [Theory]
    [InlineData("20 psi", false)] // 23 degF: frost belongs there.
    [InlineData("46 psi", true)]
    public void Findings_OfFrostOnTheLowLine_FollowWhatTheGaugeSays(string lowSide, bool lies)
    {
        var plan = Shipped.Plan("lying-gauge", $"ac_circuit.low_side={lowSide}");
        Assert.Equal(lies, plan.Findings.Any(finding => finding.Cause.Name == "low_gauge_lies" && finding.Verdict == Truth.Yes));
    }

    [Fact]
    public void Findings_OfNoDifferenceWithTheHubTurning_NeverSayThatRefrigerantIsMissing()
    {
        var plan = Shipped.Plan("no-difference");
        Assert.NotEmpty(Finding(plan, "does_not_pump").For);
        Assert.Empty(Finding(plan, "too_little").For);
        Assert.Equal("ac_circuit.set_valves", plan.TellingChecks[0].Id);
        Assert.Contains(plan.TellingChecks, check => check.Id == "compressor.answers");
    }

    [Fact]
    public void Findings_OfNoDifferenceAndAFixedCompressor_AreSureOnlyWithValvesShutAndAnotherGauge()
    {
        string[] known = ["compressor.kind=fixed", "ac_circuit.set_valves=shut"];
        Assert.Equal(Truth.Unknown, Finding(Shipped.Plan("no-difference", known), "does_not_pump").Verdict);
        Assert.Equal(Truth.Yes, Finding(Shipped.Plan("no-difference", [.. known, "ac_circuit.other_gauge=agrees"]), "does_not_pump").Verdict);
    }

    [Fact]
    public void Findings_OfNoDifferenceWithAnOpenHandValve_BlameTheValve() =>
        Assert.Equal(Truth.Yes, Finding(Shipped.Plan("no-difference", "ac_circuit.set_valves=open"), "set_left_open").Verdict);

    [Fact]
    public void Findings_OfNoDifferenceWithTheHubStanding_SayNothingOfTheCompressor()
    {
        var plan = Shipped.Plan("no-difference", "ac_circuit.hub=stands");
        Assert.DoesNotContain(plan.Findings, finding => finding.Cause.Name == "does_not_pump" && finding.For.Count > 0);
        Assert.Contains(plan.Steps, step => step.Id == "measure_gap(clutch_hub)");
    }

    [Theory]
    [InlineData("87 psi", "nothing_left", Truth.No)] // 86.7 psig at 80 degF: liquid is there, and nobody can say how much.
    [InlineData("40 psi", "too_little", Truth.Yes)]
    [InlineData("40 psi", "too_much", Truth.No)]
    [InlineData("0 psi", "nothing_left", Truth.Yes)]
    public void Findings_OfAReadingAtRest_FollowSaturation(string reading, string cause, Truth verdict)
    {
        var plan = Shipped.Plan("no-difference", $"ac_circuit.static_low={reading}", $"ac_circuit.static_high={reading}", "ac_circuit.hub=stands");
        Assert.Equal(verdict, Finding(plan, cause).Verdict);
    }

    [Fact]
    public void Findings_OfAReadingAboveSaturation_SpeakForAirOrAnotherGas()
    {
        var plan = Shipped.Plan("no-difference", "ac_circuit.static_low=110 psi", "ac_circuit.static_high=110 psi");
        Assert.NotEmpty(Finding(plan, "air_inside").For);
        Assert.NotEmpty(Finding(plan, "other_refrigerant").For);
    }

    [Fact]
    public void Findings_OfAReadingAtRest_NeverExcludeAMissingCharge()
    {
        foreach (var order in (string[])["lying-gauge", "no-difference"])
            Assert.DoesNotContain(Shipped.Plan(order).Findings, finding => finding.Cause.Name is "too_little" or "too_much" && finding.Verdict == Truth.No);
    }

    [Fact]
    public void Findings_OfTheHighSideInVacuum_BlameItsGauge()
    {
        var plan = Read("normal", "normal", "fixed", "orifice_tube", "ac_circuit.high_side=5 inHg vac");
        Assert.Equal(Truth.Yes, Finding(plan, "high_gauge_lies").Verdict);
    }

    [Fact]
    public void Findings_OfALowSideThatSinksAndRecovers_NameWater() =>
        Assert.Equal(Truth.Yes, Finding(Read("vacuum", "normal", "fixed", "orifice_tube", "ac_circuit.needles=sink_and_recover"), "water_inside").Verdict);

    [Fact]
    public void Findings_OfABlend_JudgeNoPressure()
    {
        // Source: SAE J2099: less than 98 % of one refrigerant is not recycled.
        var plan = Read("low", "low", "fixed", "orifice_tube", "ac_circuit.identified=blend");
        Assert.DoesNotContain(plan.Findings, finding => finding.Cause.Name is "too_little" or "blocked" && finding.For.Count > 0);
        Assert.Equal(Truth.Yes, Finding(plan, "other_refrigerant").Verdict);
    }

    [Fact]
    public void Plan_WithNothingRead_ReadsAtRestBeforeItRuns()
    {
        var steps = Shipped.Plan("poor-cooling").Steps.Select(step => step.Step.Operation.Name).ToList();
        Assert.True(steps.IndexOf("connect_gauges") < steps.IndexOf("read_static"));
        Assert.True(steps.IndexOf("read_static") < steps.IndexOf("read_running"));
        Assert.True(steps.IndexOf("read_running") < steps.IndexOf("disconnect_gauges"));
    }

    [Fact]
    public void Plan_OfEveryDiagnosis_SaysThatNothingIsAdded() =>
        Assert.Contains(Shipped.Plan("poor-cooling").Cautions, caution => caution.Text.ToString().Contains("Nothing is added", StringComparison.Ordinal));

    private static Plan Read(string low, string high, string compressor, string metering, params string[] more) =>
        Shipped.Plan("no-difference", [.. Statements(low, high, compressor, metering), .. more]);

    private static string[] Statements(string low, string high, string compressor, string metering) =>
        [$"ac_circuit.low_side={LowSides[low]}", $"ac_circuit.high_side={HighSides[high]}", $"compressor.kind={compressor}", $"metering_device.design={metering}"];

    private static PlanFinding Finding(Plan plan, string cause) => plan.Findings.FirstOrDefault(finding => finding.Cause.Name == cause)
        ?? throw new Xunit.Sdk.XunitException($"no {cause} in: {string.Join(", ", plan.Findings.Select(finding => finding.Cause.Name))}");
}
