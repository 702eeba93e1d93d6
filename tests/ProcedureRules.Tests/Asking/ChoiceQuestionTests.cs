using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Asking;

/// <summary>Which way is open is asked where the plan comes to the choice.</summary>
public class ChoiceQuestionTests
{
    // A look inside could find something out, and would take the pump off first: that makes the choice possible, and nothing more.
    private const string Pumps = """
        pack: pumps
        version: 1.0.0
        about: A pump that comes off one way or another
        places: [bay, bench]
        kinds:
          vehicle: {}
          pump: {}
        aspects:
          pump.place: {states: [fitted, removed], normal: fitted}
        facts:
          pump.puller: {type: yes_no, ask: "Is a puller for the {it} at hand?"}
          pump.inside: {type: [smooth, rough], ask: "How is the {it} inside?", find: look_inside}
        operations:
          wipe: {on: pump, text: "Wipe the {it}", place: bay, time: 1 min}
          take_off: {on: pump, text: "Take off the {it}", change: {place: fitted -> removed}, undo: put_on, place: bay, time: 10 min}
          put_on: {on: pump, text: "Put on the {it}", time: 10 min}
          look_inside: {on: pump, text: "Look into the {it}", place: bench, time: 2 min, phase: check, needs: [ pump.place is removed ]}
        jobs:
          clean: {on: pump, text: "Clean the {it}", do: [ wipe(it) ]}
          renew: {on: pump, text: "Renew the {it}", do: [ take_off(it) ]}
        rules:
          - rule: how it comes off
            for: {p: pump, s: step}
            when: [ "s leaves p.place fitted" ]
            then:
              - one_of:
                  - {option: Pull it, rank: 1, if: p.puller is yes, then: [ {tool: puller} ]}
                  - {option: Tap it off, rank: 2, then: [ {tool: mallet} ]}
            because: It sits tight.
            basis: common practice

        """;

    [Theory]
    [InlineData("renew", "pump.puller")]
    [InlineData("clean", null)]
    public void Question_OfAChoice_IsAskedWhereThePlanHasItsStep(string job, string? question) =>
        Assert.Equal(question, OnePack.Plan(Pumps, "pump: pump", job).Questions.SingleOrDefault(asked => asked.Id == "pump.puller")?.Id);
}
