using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Planning;

/// <summary>Where one answer wants one order and another the opposite, what decides is asked before anything is done.</summary>
public class DividedOrderTests
{
    private const string Pack = """
        pack: pumps
        version: 1.0.0
        about: A pump whose pipe is in front of it or behind it
        places: [bay]
        kinds: {vehicle: {}, pump: {}, pipe: {}}
        aspects:
          pump.place: {states: [fitted, off], normal: fitted}
          pipe.place: {states: [fitted, off], normal: fitted}
        facts:
          pipe.in_front: {type: yes_no, ask: "Does the {it} run in front of the pump?"}
          pump.worn: {type: yes_no, ask: "Is the {it} worn?"}
        operations:
          take_off_pump: {on: pump, text: "Take off the {it}", change: {place: fitted -> off}, undo: put_on_pump, place: bay, time: 10 min}
          put_on_pump: {on: pump, text: "Put on the {it}", time: 10 min}
          take_off_pipe: {on: pipe, text: "Take off the {it}", change: {place: fitted -> off}, undo: put_on_pipe, place: bay, time: 10 min}
          put_on_pipe: {on: pipe, text: "Put on the {it}", time: 10 min}
        jobs:
          clean: {on: pump, text: "Clean both", do: [ take_off_pump(it), take_off_pipe(pipe) ]}
        rules:
          - {rule: in front, for: {s: step}, when: [ s does take_off_pump, pipe.in_front is yes ], then: [ {need: pipe.place is off} ], because: It is in the way., basis: none}
          - {rule: behind, for: {s: step, r: step}, when: [ s does take_off_pump, r does take_off_pipe, pipe.in_front is no ], then: [ {order: s before r} ], because: The pump is in the way., basis: none}
          - {rule: worn, for: {s: step}, when: [ s does put_on_pump, pump.worn is yes ], then: [ {caution: "It is worn."} ], because: It is worn., basis: none}
        """;

    // The mount comes out free and with the engine up; it is freed with the engine home, and the engine goes up with the mount fastened.
    private const string Stuck = """
        pack: mounts
        version: 1.0.0
        about: A mount that never comes out
        places: [bay]
        kinds: {vehicle: {}, engine: {}, mount: {}}
        aspects:
          engine.height: {states: [home, raised], normal: home}
          mount.joint: {states: [fastened, free], normal: fastened}
          mount.place: {states: [fitted, off], normal: fitted}
        facts:
          mount.worn: {type: yes_no, ask: "Is the {it} worn?", find: look_at_mount}
        operations:
          look_at_mount: {on: mount, text: "Look at the {it}", place: bay, time: 1 min}
          raise: {on: engine, text: "Raise the {it}", change: {height: home -> raised}, undo: lower, place: bay, time: 10 min, needs: [ mount.joint is fastened ]}
          lower: {on: engine, text: "Lower the {it}", time: 10 min}
          loosen: {on: mount, text: "Free the {it}", change: {joint: fastened -> free}, undo: fasten, place: bay, time: 10 min, needs: [ engine.height is home ]}
          fasten: {on: mount, text: "Fasten the {it}", time: 10 min}
          take_out_mount: {on: mount, text: "Take out the {it}", change: {place: fitted -> off}, undo: put_in_mount, place: bay, time: 10 min, needs: [ it.joint is free, engine.height is raised ]}
          put_in_mount: {on: mount, text: "Put in the {it}", time: 10 min}
        jobs:
          renew: {on: mount, text: "Renew the {it}", do: [ take_out_mount(it) ]}
        rules:
          - {rule: worn, for: {s: step}, when: [ s does take_out_mount, mount.worn is yes ], then: [ {caution: "It is worn."} ], because: It is worn., basis: none}
        """;

    [Fact]
    public void Plan_NoOrderFitsEveryAnswer_StopsAndAsksWhatDecides()
    {
        var plan = Plan();

        Assert.True(plan.IsStopped);
        var stop = Assert.Single(plan.Stops);
        Assert.False(stop.IsSure);
        Assert.Contains("Does the pipe run in front of the pump?", stop.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains(plan.Questions, question => question.Id == "pipe.in_front");
    }

    [Theory]
    [InlineData("yes", "take_off_pipe", "take_off_pump")]
    [InlineData("no", "take_off_pump", "take_off_pipe")]
    public void Plan_Answered_HasTheOrderOfTheAnswer(string answer, string first, string second)
    {
        var steps = Plan($"pipe.in_front={answer}").Steps.Select(step => step.Step.Operation.Name).ToList();
        Assert.InRange(steps.IndexOf(first), 0, steps.IndexOf(second) - 1);
    }

    [Fact]
    public void Plan_ProvedToHaveNoOrder_TellsWhatIsStuck()
    {
        var diagnostic = Assert.Single(OnePack.Open(Stuck, "engine: engine, mount: mount", "renew").Plan(TestContext.Current.CancellationToken).Diagnostics);

        Assert.Equal("PR0702", diagnostic.Code);
        Assert.Contains("take_out_mount(mount)", diagnostic.Message, StringComparison.Ordinal);
    }

    private static Plan Plan(params string[] statements) => OnePack.Plan(Pack, "pump: pump, pipe: pipe", "clean", statements);
}
