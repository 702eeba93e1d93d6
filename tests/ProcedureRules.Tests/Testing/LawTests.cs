using ProcedureRules.Diagnostics;
using ProcedureRules.Plans;
using ProcedureRules.Testing.Laws;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>Laws judge plans: each sort of conclusion, kept and broken.</summary>
public class LawTests
{
    private const string Pack = """
        pack: bench
        version: 1.0.0
        about: A tank on a bench.
        places: [ bench, floor ]
        energies: [ heat ]
        kinds:
          vehicle: {}
          tank: {}
          lid: {}
        aspects:
          part.place: {states: [fitted, off], normal: fitted}
          tank.fill: {states: [full, empty], normal: full}
          tank.wash: {states: [no, yes], normal: no, mark: yes}
          tank.look: {states: [no, yes], normal: no, mark: yes}
        facts:
          tank.rust: {type: [none, heavy], ask: How rusty is it?}
          tank.cold_for: {type: duration, range: 0 min..9 h, ask: How long has it been cold?}
        operations:
          empty_tank: {on: tank, text: "Empty the {it}", change: {fill: full -> empty}, undo: fill_tank, place: floor, time: 5 min, needs: [ lid.place is off ]}
          fill_tank: {on: tank, text: "Fill the {it}", time: 5 min}
          wash_tank: {on: tank, text: "Wash the {it}", change: {wash: no -> yes}, place: bench, time: 5 min, needs: [ it.fill is empty ], energy: [ heat ]}
          look_for_drips: {on: tank, text: "Look for drips at the {it}", change: {look: no -> yes}, place: bench, time: 1 min, phase: prove, needs: [ it.fill is full ]}
          take_lid: {on: lid, text: "Take the {it} off", change: {place: fitted -> off}, undo: put_lid, place: bench, time: 1 min}
          put_lid: {on: lid, text: "Put the {it} on", time: 1 min}
        rules:
          - rule: it drips
            for: {s: step, t: step}
            when: [ s does empty_tank, t does wash_tank ]
            then: [ {wait: {from: s, until: t, least: 10 min, text: Let it drip}}, {warning: Mind the drips, at: s} ]
            because: x
            basis: common practice
        jobs:
          rinse: {on: tank, text: "Rinse the {it}", ends: [ it.wash is yes ]}
          rinse_and_look: {on: tank, text: "Rinse the {it}, and look", ends: [ it.wash is yes, it.look is yes ]}
        laws:
          - {law: the law, for: {s: step, t: step}, LAW, because: x, basis: common practice}
        """;

    [Theory]
    [InlineData("when: [ s does wash_tank, t does put_lid ], then: [ {need: tank.fill is empty, at: s} ]", null)]
    [InlineData("when: [ s does wash_tank, t does put_lid ], then: [ {need: tank.fill is full, at: s} ]", "tank.fill is empty at step 3, wash_tank(tank)")]
    [InlineData("when: [ s does wash_tank, t does put_lid ], then: [ {end: tank.fill is full} ]", null)]
    [InlineData("when: [ s does wash_tank, t does put_lid ], then: [ {end: tank.fill is empty} ]", "tank.fill is full at the end")]
    [InlineData("when: [ s does take_lid, t does empty_tank ], then: [ {order: s before t} ]", null)]
    [InlineData("when: [ s does take_lid, t does empty_tank ], then: [ {order: t before s} ]", "empty_tank(tank) comes at step 1, take_lid(lid) or later")]
    [InlineData("when: [ s does take_lid, t place floor ], then: [ {forbid: s} ]", "take_lid(lid) is in the plan")]
    [InlineData("when: [ s does take_lid, t place floor ], then: [ {forbid: fill_tank(tank)} ]", "fill_tank(tank) is in the plan")]
    [InlineData("when: [ s does take_lid, t place floor ], then: [ {forbid: tank.fill is empty} ]", "tank.fill is empty at step 3, wash_tank(tank)")]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {wait: {from: s, until: t, least: 5 min}} ]", null)]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {wait: {from: s, until: t, least: 15 min}} ]", "nothing makes wash_tank(tank) wait after empty_tank(tank)")]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {wait: {since: tank.cold_for, until: t, least: 1 h}} ]", null)]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {wait: {since: tank.cold_for, until: t, least: 3 h}} ]", "nothing makes wash_tank(tank) wait")]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {warning: the drips, at: s} ]", null)]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {caution: the drips, at: s} ]", null)]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {danger: the drips, at: s} ]", "'the drips' does not stand at step 2, empty_tank(tank)")]
    [InlineData("when: [ s leaves tank.fill full, t energy heat ], then: [ {notice: the drips, at: t} ]", "'the drips' does not stand at step 3, wash_tank(tank)")]
    [InlineData("when: [ s reaches tank.fill full, t moves lid ], then: [ {forbid: s} ]", null)]
    [InlineData("when: [ s reaches tank.fill full, t touches lid, tank.rust is heavy ], then: [ {forbid: s} ]", null)]
    [InlineData("when: [ s reaches tank.fill full, t touches lid, job rinse on tank, s phase back ], then: [ {forbid: s} ]", "fill_tank(tank) is in the plan")]
    public void Broken_OfAPlan_TellsWhatIsWrong(string law, string? wrong)
    {
        var (engine, plan) = Plan(law);
        var broken = PackLaws.Broken(engine, plan).Select(one => one.Text).Distinct();

        Assert.Equal(["take_lid(lid)", "empty_tank(tank)", "wash_tank(tank)", "fill_tank(tank)", "put_lid(lid)"], plan.Steps.Select(step => step.Id));
        Assert.Equal(wrong is null ? [] : [wrong], broken);
    }

    [Fact]
    public void Laws_OfAPack_MakeNoPlan()
    {
        var (_, plan) = Plan("when: [ s does empty_tank, t does wash_tank ], then: [ {need: lid.place is fitted, at: t} ]");

        Assert.Equal(["take_lid(lid)", "empty_tank(tank)", "wash_tank(tank)", "fill_tank(tank)", "put_lid(lid)"], plan.Steps.Select(step => step.Id));
    }

    // What is looked at before the work says nothing of it.
    [Theory]
    [InlineData("s before t", "look_for_drips(tank) stands before wash_tank(tank)")]
    [InlineData("t before s", null)]
    public void Broken_OfAProofBeforeTheWork_TellsBoth(string order, string? wrong)
    {
        var rule = $"  - rule: when to look\n    for: {{s: step, t: step}}\n    when: [ s does look_for_drips, t does wash_tank ]\n    then: [ {{order: {order}}} ]\n    because: x\n    basis: common practice\njobs:";
        var (engine, plan) = Plan("when: [ s does take_lid, t does empty_tank ], then: [ {order: s before t} ]", "rinse_and_look", rule);

        Assert.Equal(wrong is null ? [] : [wrong], PackLaws.Broken(engine, plan).Select(one => one.Text));
    }

    private static (ProcedureEngine Engine, Plan Plan) Plan(string law, string job = "rinse", string rule = "jobs:")
    {
        var text = Pack.Replace("LAW", law, StringComparison.Ordinal).Replace("jobs:", rule, StringComparison.Ordinal);
        var loaded = ProcedureEngine.Load([new SourceFile("bench.yaml", text)]);
        Assert.Equal("", string.Concat(loaded.Diagnostics.Select(mistake => mistake.ToSnippet())));
        var set = ProcedureRules.Testing.ScenarioSet.Read(loaded.Engine!, [new SourceFile("tank.yaml", $"scenario: x\nvehicle: {{parts: {{tank: tank, lid: lid}}, facts: {{tank.cold_for: 2 h}}}}\njobs: [ {job} ]\nexpect: [ {{plan: goes_on}} ]\n")]);
        return (loaded.Engine!, loaded.Engine!.Open(set.Cases.Single().Situation).Session!.Plan(TestContext.Current.CancellationToken).Plan!);
    }
}
