using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Asking;

/// <summary>What would tell rival causes apart, and how little work it takes.</summary>
public class TellingCheckTests
{
    private const string Pack = """
        pack: pumps
        version: 1.0.0
        about: A pump that does not pump
        places: [bay, under]
        kinds: {vehicle: {}, pump: {}}
        aspects:
          vehicle.height: {states: [ground, raised], normal: ground}
        facts:
          pump.silent: {type: yes_no, ask: "Is the {it} silent?"}
          pump.pressure: {type: gauge_pressure, range: 0..100 psi, ask: "What pressure does the {it} give?", find: read_pressure}
          pump.wear: {type: length, range: 0..40 thou, ask: "How far is the {it} worn?", find: measure_wear, how: With a feeler gauge.}
          pump.colour: {type: [red, blue], ask: "What colour is the {it}?"}
        operations:
          raise: {on: vehicle, text: "Raise the {it}", change: {height: ground -> raised}, undo: lower, place: bay, time: 5 min}
          lower: {on: vehicle, text: "Lower the {it}", time: 5 min}
          read_pressure: {on: pump, text: "Read the gauge at the {it}", place: bay, time: 2 min, phase: check}
          measure_wear: {on: pump, text: "Measure the {it}", place: under, time: 10 min, phase: check, needs: [ vehicle.height is raised ]}
        causes:
          dead: {on: pump, text: "The {it} gets no current"}
          worn: {on: pump, text: "The {it} is worn"}
          blocked: {on: pump, text: "The line behind the {it} is blocked"}
        jobs:
          diagnose: {on: pump, text: "Find out why the {it} does not pump", know: [ it.pressure, it.wear ]}
        rules:
          - {rule: a pump, when: [ job diagnose on pump ], then: [ {for: dead(pump), strength: weak}, {for: worn(pump), strength: weak}, {for: blocked(pump), strength: weak} ], because: It does not pump., basis: none}
          - {rule: silence, when: [ pump.silent is yes ], then: [ {for: dead(pump), strength: strong}, {exclude: worn(pump)}, {exclude: blocked(pump)} ], because: It is silent., basis: none}
          - {rule: sound, when: [ pump.silent is no ], then: [ {exclude: dead(pump)} ], because: It runs., basis: none}
          - {rule: high pressure, when: [ pump.pressure > 60 psi ], then: [ {for: blocked(pump), strength: strong}, {exclude: worn(pump)} ], because: It presses against something., basis: none}
          - {rule: wear, when: [ pump.wear >= 12 thou ], then: [ {for: worn(pump), strength: strong} ], because: Its gears leak., basis: none}
          - {rule: no wear, when: [ pump.wear < 12 thou ], then: [ {exclude: worn(pump)} ], because: Its gears are tight., basis: none}
        """;

    [Fact]
    public void Checks_AmongRivals_ComeWithTheLeastWorkFirst()
    {
        var plan = Plan();
        Assert.Equal(["pump.silent", "pump.pressure", "pump.wear"], plan.TellingChecks.Select(check => check.Id));
        Assert.Equal(["0 min", "2 min", "15 min"], plan.TellingChecks.Select(check => check.Labour.ToDisplay(UnitSystem.Us)));
        Assert.Equal("Is the pump silent?", plan.TellingChecks[0].Text.ToString());
        Assert.Equal("With a feeler gauge.", plan.TellingChecks[2].How?.ToString());
        Assert.Equal("Raise the vehicle", Assert.Single(plan.TellingChecks[2].Work).ToString());
    }

    [Fact]
    public void Answers_OfACheck_SayWhatTheyConfirmAndRuleOut()
    {
        var silent = Plan().TellingChecks[0];
        Assert.Equal(["no", "yes"], silent.Answers.Select(answer => answer.Answer.ToString()));
        Assert.Equal(["The pump gets no current"], silent.Answers[0].RulesOut.Select(cause => cause.ToString()));
        Assert.Equal(["The line behind the pump is blocked", "The pump is worn"], silent.Answers[1].RulesOut.Select(cause => cause.ToString()).Order());
    }

    [Fact]
    public void Answers_OfAFigure_AreTheStretchesBetweenItsThresholds()
    {
        var checks = Plan().TellingChecks;
        Assert.Equal(["above 60 psi"], checks[1].Answers.Select(answer => answer.Answer.ToString()));
        Assert.Equal("below 12 thou", checks[2].Answers[0].Answer.ToString());
    }

    [Fact]
    public void Checks_OfWhatIsKnownAlready_AreNotAsked()
    {
        var plan = Plan("pump.silent=no");
        Assert.Equal(["pump.pressure", "pump.wear"], plan.TellingChecks.Select(check => check.Id));
        Assert.Equal(Truth.No, plan.Findings.Single(finding => finding.Cause.Name == "dead").Verdict);
    }

    [Fact]
    public void Checks_WhereOneCauseIsLeft_StillTellWhetherItIsSure() =>
        Assert.Equal(["pump.pressure"], Plan("pump.silent=no", "pump.wear=3 thou").TellingChecks.Select(check => check.Id));

    [Fact]
    public void Checks_WhereNothingIsPossible_AreNone() => Assert.Empty(Plan("pump.silent=yes").TellingChecks);

    [Theory]
    [InlineData("red", "pump.silent, pump.wear")]
    [InlineData("blue", "pump.silent, pump.pressure, pump.wear")]
    public void Checks_ThatMayNotBeDone_AreNotOffered(string colour, string checks)
    {
        const string NotNow = "  - {rule: a red one is under load, for: {s: step}, when: [ s does read_pressure, pump.colour is red ], then: [ {forbid: s} ], because: It would burst., basis: none}\n";

        Assert.Equal(checks, string.Join(", ", OnePack.Plan($"{Pack}\n{NotNow}", "pump: pump", "diagnose", $"pump.colour={colour}").TellingChecks.Select(check => check.Id)));
    }

    private static Plan Plan(params string[] statements) => OnePack.Plan(Pack, "pump: pump", "diagnose", statements);
}
