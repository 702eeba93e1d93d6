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

    [Fact]
    public void Stop_ThatMayBe_IsToldAndHeldBeforeTheStepItIsAbout()
    {
        var plan = Plan(Above, "above");

        var stop = Assert.Single(plan.Stops);
        Assert.False(stop.IsSure);
        Assert.False(plan.IsStopped);
        var hold = Assert.Single(plan.Steps.Single(step => step.Step.Operation.Name == "raise").Holds);
        Assert.Contains("The lifting points do not carry the vehicle.", hold.Text.ToString(), StringComparison.Ordinal);
        Assert.Equal(["vehicle.points_sound"], hold.Questions);
        Assert.All(plan.Steps.Where(step => step.Step.Operation.Name != "raise"), step => Assert.Empty(step.Holds));
    }

    [Theory]
    [InlineData("yes", false)]
    [InlineData("no", true)]
    public void Stop_ThatIsKnown_StopsOrDoesNot(string points, bool stops) =>
        Assert.Equal(stops, Plan(Above, "above", $"vehicle.points_sound={points}").IsStopped);

    [Fact]
    public void Stop_ThatStandsAsIfSure_LeavesNoPlan() =>
        Assert.True(Plan(Above.Replace("vehicle.\"} ]", "vehicle.\", if_unknown: do} ]", StringComparison.Ordinal), "above").IsStopped);

    [Fact]
    public void Prohibition_ThatMayBe_TakesTheOtherWay()
    {
        var plan = Plan(Ways, "see", "pump.cracked=no");
        Assert.Contains(plan.Steps, step => step.Step.Operation.Name == "look_behind");
        Assert.Empty(plan.Stops);
    }

    [Fact]
    public void Prohibition_ThatMayBeAndLeavesNoOtherWay_IsToldAndHeldBeforeTheStep()
    {
        var plan = Plan(Ways, "see", "pump.cracked=yes");

        Assert.Contains(plan.Stops, stop => !stop.IsSure && stop.Text.ToString().Contains("would be needed, and it is not known whether it may be done", StringComparison.Ordinal));
        var hold = Assert.Single(plan.Steps.Single(step => step.Step.Operation.Name == "look_from_below").Holds);
        Assert.True(hold.PlansAgain);
        Assert.Equal(["pump.rusty"], hold.Questions);
    }

    [Fact]
    public void Prohibition_ThatHolds_KeepsNoWayFromBeingTaken()
    {
        var plan = Plan(Ways.Replace("[ {forbid: s} ]", "[ {forbid: s, if_unknown: hold} ]", StringComparison.Ordinal), "see", "pump.cracked=no");
        Assert.Empty(plan.Stops);
        Assert.Single(plan.Steps.Single(step => step.Step.Operation.Name == "look_from_below").Holds);
    }

    // The same pack with a job that goes through what may not be, and one that can be done in two ways.
    private static string Above => Pack.Replace("jobs:\n", "jobs:\n  above: {on: pump, text: \"Look from below\", do: [ look_from_below(it) ]}\n", StringComparison.Ordinal);

    private static string Ways => Pack.Replace("jobs:\n", "jobs:\n  see: {on: pump, text: \"See the {it}\", ends: [ it.looked is yes ]}\n", StringComparison.Ordinal)
        .Replace("aspects:\n", "aspects:\n  pump.looked: {states: [not_yet, yes], normal: not_yet, mark: yes}\n", StringComparison.Ordinal)
        .Replace("place: under, time: 2 min, phase: check", "change: {looked: not_yet -> yes}, place: bay, time: 1 min, phase: check", StringComparison.Ordinal)
        .Replace(", needs: [ vehicle.height is raised ]", "", StringComparison.Ordinal)
        .Replace("text: \"Look behind the {it}\", place", "text: \"Look behind the {it}\", change: {looked: not_yet -> yes}, place", StringComparison.Ordinal)
        .Replace("facts:\n", "facts:\n  pump.rusty: {type: yes_no, ask: \"Is the {it} rusty?\"}\n", StringComparison.Ordinal)
        + "\n  - {rule: not past a rusty one, for: {s: step}, when: [ s does look_from_below, pump.rusty is yes ], then: [ {forbid: s} ], because: It would crumble., basis: none}"
        + "\n  - {rule: not behind a cracked one, for: {s: step}, when: [ s does look_behind, pump.cracked is yes ], then: [ {forbid: s} ], because: It is cracked., basis: none}";

    private static Plan Plan(string pack, string job, params string[] statements) => OnePack.Plan(pack, "pump: pump", job, statements);

    private static Plan Plan(params string[] statements) => OnePack.Plan(Pack, "pump: pump", "clean", statements);
}
