using System.Text;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;

namespace ProcedureRules.Benchmarks;

/// <summary>
/// A made-up job: a panel is renewed behind others that cover it and each other, three deep and more. Every twentieth is heavy and propped in one
/// of two ways; of every twenty-fifth it is not known whether it is rusty.
/// </summary>
internal static class GeneratedJob
{
    private const string Pack = """
        pack: panels
        version: 1.0.0
        about: Panels over panels
        places: [bay]
        kinds: {vehicle: {}, panel: {}}
        relations:
          covers: {of: [panel, panel], text: "{a} covers {b}"}
        aspects:
          panel.place: {states: [fitted, off], normal: fitted}
          panel.prop: {states: [bare, propped], normal: bare}
          panel.unit: {states: [old, new], normal: old, mark: yes}
        facts:
          panel.heavy: {type: yes_no, ask: "Is the {it} heavy?"}
          panel.rusty: {type: yes_no, ask: "Is the {it} rusty?"}
        operations:
          remove_panel: {on: panel, text: "Take the {it} off", change: {place: fitted -> off}, undo: fit_panel, place: bay, time: 2..5 min}
          fit_panel: {on: panel, text: "Fit the {it}", time: 2..5 min}
          prop_on_rod: {on: panel, text: "Prop the {it} on a rod", change: {prop: bare -> propped}, undo: take_rod, place: bay, time: 2..4 min}
          take_rod: {on: panel, text: "Take the rod from the {it}", time: 1 min}
          prop_on_stand: {on: panel, text: "Prop the {it} on a stand", change: {prop: bare -> propped}, undo: take_stand, place: bay, time: 3..6 min}
          take_stand: {on: panel, text: "Take the stand from the {it}", time: 1 min}
          renew_panel: {on: panel, text: "Compare the new {it} with the old one", change: {unit: old -> new}, needs: [ it.place is off ], place: bay, time: 5 min}
        jobs:
          replace_panel: {on: panel, text: "Replace the {it}", ends: [ it.unit is new ]}
        rules:
          - {rule: covers, for: {a: panel, b: panel, s: step}, when: [ "s leaves b.place fitted", "covers(a, b)" ], then: [ {need: a.place is off} ], because: "{a} lies over it.", basis: none}
          - {rule: heavy, for: {a: panel, s: step}, when: [ "s leaves a.place fitted", a.heavy is yes ], then: [ {need: a.prop is propped} ], because: It is heavy., basis: none}
          - {rule: rusty, for: {a: panel, s: step}, when: [ "s leaves a.place fitted", a.rusty is yes ], then: [ {caution: It tears.} ], because: It is rusty., basis: none}
        """;

    /// <summary>A session on a job of about so many steps.</summary>
    public static ProcedureSession Open(int steps)
    {
        var loaded = ProcedureEngine.Load([new SourceFile("panels.yaml", Pack)]);
        var engine = loaded.Engine ?? throw new InvalidOperationException(string.Join('\n', loaded.Diagnostics));
        var bag = new DiagnosticBag();
        var situation = new SheetReader(engine.Vocabulary, engine.Archetypes).Read(
            new SourceFile("vehicle.yaml", Vehicle(steps / 2)), new SourceFile("order.yaml", "work_order: x\njobs: [ {job: replace_panel, on: p0} ]\n"), bag);
        return engine.Open(situation ?? throw new InvalidOperationException(bag.ToLines())).Session ?? throw new InvalidOperationException(bag.ToLines());
    }

    private static string Vehicle(int panels)
    {
        var text = new StringBuilder("vehicle: x\nparts:\n");
        for (var i = 0; i < panels; i++) text.Append($"  p{i}: panel\n");
        text.Append("relations:\n");
        for (var i = 1; i < panels; i++) text.Append($"  - covers(p{i}, p{(i - 1) / 3})\n");
        text.Append("facts:\n");
        for (var i = 0; i < panels; i++)
        {
            text.Append($"  p{i}.heavy: {(i % 20 == 7 ? "yes" : "no")}\n");
            if (i % 25 != 3) text.Append($"  p{i}.rusty: no\n");
        }

        return text.ToString();
    }
}
