using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Asking;

/// <summary>What can wait until something else is known is not asked at once.</summary>
public class PrecedenceTests
{
    [Fact]
    public void Question_ThatMattersOnlyBesideAnother_WaitsForIt()
    {
        var plan = Plan("{caution: It drips.}", "pump.seeps is yes", "pump.worn is yes");

        var (first, second) = (plan.Questions.Single(question => question.After.Count == 0), plan.Questions.Single(question => question.After.Count > 0));
        Assert.Equal([first.Id], second.After);
    }

    [Fact]
    public void Question_ThatMattersByItselfToo_WaitsForNone()
    {
        var plan = OnePack.Plan(
            Pack("{caution: It drips.}", "pump.seeps is yes", "pump.worn is yes")
            + "  - {rule: alone, for: {s: step}, when: [ s does take_off, pump.worn is yes ], then: [ {caution: It comes apart.} ], because: x, basis: none}\n"
            + "  - {rule: alone too, for: {s: step}, when: [ s does take_off, pump.seeps is yes ], then: [ {caution: It may drip.} ], because: x, basis: none}\n",
            "pump: pump", "clean");

        Assert.Equal(2, plan.Questions.Count);
        Assert.All(plan.Questions, question => Assert.Empty(question.After));
    }

    [Fact]
    public void Question_OfOneConditionWithAnother_WaitsForNone()
    {
        // Neither answer alone settles what "or" joins, and either may.
        var plan = Plan("{caution: It drips.}", "pump.seeps is yes or pump.worn is yes");

        Assert.All(plan.Questions, question => Assert.Empty(question.After));
    }

    [Fact]
    public void Question_WhoseRuleWaitsForWhatTheWorkFindsOut_WaitsForThatStep()
    {
        var plan = Plan("{caution: It drips.}", "pump.inside is rough", "pump.worn is yes");

        var later = plan.Questions.Single(question => question.After.Count > 0);
        Assert.Equal(("pump.worn", "pump.inside"), (later.Id, Assert.Single(later.After)));
        Assert.NotNull(plan.Questions.Single(question => question.Id == "pump.inside").AtStep);
    }

    [Fact]
    public void Question_BehindAFactThatRulesSet_WaitsForWhatThatFactIsReadWith()
    {
        var plan = OnePack.Plan(
            Pack("{caution: It drips.}", "pump.tired is yes", "pump.seeps is yes")
            + "  - {rule: tired, when: [ pump.worn is yes ], then: [ {set: {pump.tired: yes}} ], because: x, basis: none}\n",
            "pump: pump", "clean");

        Assert.Equal(2, plan.Questions.Count);
        Assert.Single(plan.Questions, question => question.After.Count > 0);
    }

    [Fact]
    public void Question_OnTheCoolingJob_AsksFewAtOnceAndTheRestAfterTheGaugesAreRead()
    {
        var plan = Shipped.Plan("poor-cooling");

        var now = plan.Questions.Where(question => question.AtStep is null).ToList();
        Assert.InRange(now.Count(question => question.After.Count == 0), 1, 4);
        Assert.True(now.Count(question => question.After.Count > 0) >= 6);
    }

    [Fact]
    public void After_InEveryShippedPlan_NamesQuestionsThatWaitForNoneThemselves()
    {
        foreach (var order in Shipped.Orders)
        {
            var questions = Shipped.Plan(order).Questions.ToDictionary(question => question.Id);
            foreach (var before in questions.Values.SelectMany(question => question.After)) Assert.Empty(questions[before].After);
        }
    }

    private static Plans.Plan Plan(string then, params string[] when) => OnePack.Plan(Pack(then, when), "pump: pump", "clean");

    private static string Pack(string then, params string[] when) => $$"""
        pack: pumps
        version: 1.0.0
        about: A pump that is cleaned
        places: [bay, bench]
        kinds:
          vehicle: {}
          pump: {}
        aspects:
          pump.place: {states: [fitted, removed], normal: fitted}
        facts:
          pump.worn: {type: yes_no, ask: "Is the {it} worn?"}
          pump.seeps: {type: yes_no, ask: "Does the {it} seep?"}
          pump.tired: {type: yes_no, derived: yes}
          pump.inside: {type: [smooth, rough], ask: "How is the {it} inside?", find: look_inside}
        operations:
          take_off: {on: pump, text: "Take off the {it}", change: {place: fitted -> removed}, undo: put_on, place: bay, time: 10 min}
          put_on: {on: pump, text: "Put on the {it}", time: 10 min}
          look_inside: {on: pump, text: "Look into the {it}", place: bench, time: 2 min, phase: check, needs: [ pump.place is removed ]}
        jobs:
          clean: {on: pump, text: "Clean behind the {it}", do: [ take_off(it) ]}
        rules:
          - {rule: both, for: {s: step}, when: [ s does put_on, {{string.Join(", ", when)}} ], then: [ {{then}} ], because: x, basis: none}

        """;
}
