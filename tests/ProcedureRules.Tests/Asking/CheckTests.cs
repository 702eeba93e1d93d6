using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Asking;

/// <summary>What is found out on the way, and what can only be asked.</summary>
public class CheckTests
{
    private const string Pack = """
        pack: pumps
        version: 1.0.0
        about: A pump that can be looked at warm in its place or cold on the bench
        places: [bay, bench]
        kinds: {vehicle: {}, pump: {}}
        aspects:
          pump.place: {states: [fitted, removed], normal: fitted}
          pump.heat: {states: [cold, warm], normal: cold}
        facts:
          pump.worn: {type: yes_no, ask: "Is the {it} worn?", find: look_at_the_bench}
          pump.seeps: {type: yes_no, ask: "Does the {it} seep when it is warm?", find: look_warm}
        operations:
          warm: {on: pump, text: "Warm the {it}", change: {heat: cold -> warm}, undo: cool, place: bay, time: 5 min, needs: [ pump.place is fitted ]}
          cool: {on: pump, text: "Let the {it} cool", time: 5 min}
          look_warm: {on: pump, text: "Look at the warm {it}", place: bay, time: 2 min, phase: check, needs: [ pump.heat is warm, pump.place is removed ]}
          look_at_the_bench: {on: pump, text: "Look at the {it} at the bench", place: bench, time: 2 min, phase: check, needs: [ pump.place is removed ]}
          take_off: {on: pump, text: "Take off the {it}", change: {place: fitted -> removed}, undo: put_on, place: bay, time: 10 min, needs: [ pump.heat is cold ]}
          put_on: {on: pump, text: "Put on the {it}", time: 10 min}
        jobs:
          clean: {on: pump, text: "Clean behind the {it}", do: [ take_off(it) ]}
        rules:
          - {rule: worn, for: {s: step}, when: [ s does put_on, pump.worn is yes ], then: [ {caution: "It comes apart."} ], because: It is worn., basis: none}
          - {rule: seeps, for: {s: step}, when: [ s does put_on, pump.seeps is yes ], then: [ {caution: "It drips."} ], because: It seeps., basis: none}
        """;

    [Fact]
    public void Check_ThatNoOrderReaches_IsAskedAndTakesNoOtherCheckAlong()
    {
        var plan = OnePack.Plan(Pack, "pump: pump", "clean");
        Assert.Equal(["take_off", "look_at_the_bench", "put_on"], plan.Steps.Select(step => step.Step.Operation.Name));
        Assert.Null(plan.Questions.Single(question => question.Id == "pump.seeps").AtStep);
        Assert.NotNull(plan.Questions.Single(question => question.Id == "pump.worn").AtStep);
    }
}
