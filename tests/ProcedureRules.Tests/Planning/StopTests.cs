using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Planning;

/// <summary>What a stop stops, and what it does not.</summary>
public class StopTests
{
    private const string Pack = """
        pack: pumps
        version: 1.0.0
        about: A pump that is looked at from above or from below
        places: [bay, under]
        kinds: {vehicle: {}, pump: {}}
        aspects:
          vehicle.height: {states: [ground, raised], normal: ground}
          pump.place: {states: [fitted, removed], normal: fitted}
        facts:
          vehicle.points_sound: {type: yes_no, ask: "Are the lifting points sound?"}
          pump.worn: {type: yes_no, ask: "Is the {it} worn?", find: look_from_below}
          pump.cracked: {type: yes_no, ask: "Is the {it} cracked?", find: look_behind}
        operations:
          raise: {on: vehicle, text: "Raise the {it}", change: {height: ground -> raised}, undo: lower, place: bay, time: 5 min}
          lower: {on: vehicle, text: "Lower the {it}", time: 5 min}
          look_from_below: {on: pump, text: "Look at the {it} from below", place: under, time: 2 min, phase: check, needs: [ vehicle.height is raised ]}
          look_behind: {on: pump, text: "Look behind the {it}", place: bay, time: 2 min, phase: check, needs: [ pump.place is removed ]}
          warm: {on: pump, text: "Warm the {it}", place: bay, time: 10 min}
          take_off: {on: pump, text: "Take off the {it}", change: {place: fitted -> removed}, undo: put_on, place: bay, time: 10 min}
          put_on: {on: pump, text: "Put on the {it}", time: 10 min}
        jobs:
          clean: {on: pump, text: "Clean behind the {it}", do: [ take_off(it) ]}
        rules:
          - {rule: unsound points, for: {s: step}, when: [ s leaves vehicle.height ground, vehicle.points_sound is no ], then: [ {stop: "The lifting points do not carry the vehicle."} ], because: It would fall., basis: none}
          - {rule: worn, for: {s: step}, when: [ s does take_off, pump.worn is yes ], then: [ {caution: "It comes apart."} ], because: It is worn., basis: none}
          - {rule: warm first, for: {s: step}, when: [ s does take_off ], then: [ {do: warm(pump), before: s} ], because: It sticks., basis: none}
          - {rule: nothing warm from below, for: {s: step, r: step}, when: [ s leaves vehicle.height ground, r does warm, vehicle.points_sound is no ], then: [ {forbid: r} ], because: Warm air rises., basis: none}
          - {rule: seen from below, for: {s: step, r: step}, when: [ s does look_from_below, r does put_on ], then: [ {detail: "Look at it once more.", at: r} ], because: It was seen., basis: none}
          - {rule: cracked, for: {s: step}, when: [ s does take_off, pump.cracked is yes ], then: [ {stop: "A cracked pump is not fitted again.", if_unknown: hold} ], because: It is cracked., basis: none}
        """;

    [Fact]
    public void Stop_OfAStepThatOnlyFindsSomethingOut_DoesNotStopTheJob()
    {
        var plan = Plan();
        Assert.Empty(plan.Stops);
        Assert.DoesNotContain(plan.Steps, step => step.Step.Operation.Name is "look_from_below" or "raise");
        Assert.Null(plan.Questions.Single(question => question.Id == "pump.worn").AtStep);
        Assert.DoesNotContain(plan.Questions, question => question.Id == "vehicle.points_sound");
    }

    [Fact]
    public void Finding_WhoseWayIsKnownToBeOpen_IsACheckInThePlan()
    {
        var plan = Plan("vehicle.points_sound=yes");
        Assert.Contains(plan.Steps, step => step.Step.Operation.Name == "look_from_below");
        Assert.Contains(plan.Steps, step => step.Detail.Any(line => line.ToString() == "Look at it once more."));
    }

    [Fact]
    public void WhatGoesWithAStep_BecauseOfAnotherThatIsNotInThePlan_IsNotThere()
    {
        var plan = Plan("pump.worn=no");
        Assert.DoesNotContain(plan.Steps, step => step.Step.Operation.Name == "look_from_below");
        Assert.DoesNotContain(plan.Steps, step => step.Detail.Any(line => line.ToString() == "Look at it once more."));
    }

    [Fact]
    public void Prohibition_ThatRestsOnAStepThatOnlyFindsSomethingOut_ForbidsNothing() =>
        Assert.Contains(Plan("vehicle.points_sound=no").Steps, step => step.Step.Operation.Name == "warm");

    [Fact]
    public void Stop_ThatMayBeAndHolds_LeavesThePlanUpToTheCheck()
    {
        var plan = Plan();
        Assert.Contains(plan.Steps, step => step.Step.Operation.Name == "take_off");
        var hold = plan.Holds.Concat(plan.Steps.SelectMany(step => step.Holds)).Single(hold => hold.Questions.Contains("pump.cracked"));
        Assert.Contains("A cracked pump is not fitted again", hold.Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Stop_ThatHolds_StopsOnceItIsSure()
    {
        var stop = Assert.Single(Plan("pump.cracked=yes").Stops);
        Assert.True(stop.IsSure);
        Assert.Equal("A cracked pump is not fitted again.", stop.Text.ToString());
    }

    private static Plan Plan(params string[] statements) => OnePack.Plan(Pack, "pump: pump", "clean", statements);
}
