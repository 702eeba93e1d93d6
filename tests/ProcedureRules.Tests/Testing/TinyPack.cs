using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>A pack of a pan under a cover, with a rule of each sort, and scenarios on it.</summary>
internal static class TinyPack
{
    public const string Text = """
        pack: tiny
        version: 1.0.0
        about: A pan under a cover.
        places: [bay]
        kinds: {vehicle: {}, pan: {}, cover: {}}
        aspects:
          part.place: {states: [fitted, off], normal: fitted}
        facts:
          pan.gap: {type: length, range: 0..100 in, ask: What gap?, how: Feeler gauge.}
          pan.slack: {type: length, range: 0..100 in, derived: yes}
        operations:
          remove_cover: {on: cover, text: Lift the cover, change: {place: fitted -> off}, undo: fit_cover, place: bay, time: 1 min}
          fit_cover: {on: cover, text: Fit the cover, time: 1 min}
          remove_pan: {on: pan, text: Lower the pan, change: {place: fitted -> off}, undo: fit_pan, place: bay, time: 1 min}
          fit_pan: {on: pan, text: Fit the pan, time: 1 min}
        jobs:
          take_off: {on: pan, text: Take the pan off, ends: [ it.place is off ], do: [ remove_cover(cover) ]}
        rules:
          - rule: a small gap
            for: {s: step}
            when: [ "s leaves pan.place fitted", pan.gap < 2 in ]
            then: [ {danger: Mind the gap} ]
            because: It pinches.
            basis: common practice
          - rule: the cover comes first
            for: {s: step, t: step}
            when: [ s does remove_cover, t does remove_pan ]
            then: [ {order: s before t} ]
            because: It is on top.
            basis: common practice
          - rule: oil is under it
            for: {s: step}
            when: [ s does remove_pan, s place bay, cover.place is off ]
            then: [ {warning: Oil runs out} ]
            because: The cover kept it in.
            basis: common practice
          - rule: a thin wrench
            for: {s: step}
            when: [ "s leaves pan.place fitted", pan.gap < 2 in ]
            then: [ {detail: Use the thin wrench} ]
            because: There is no room.
            basis: common practice
            if_unknown: do
          - rule: slack
            then: [ {set: {pan.slack: 5 in}} ]
            because: So it is made.
            basis: common practice
        """;

    public static ProcedureEngine Engine { get; } = Load(Text);

    /// <summary>The pack, or a version of it.</summary>
    public static ProcedureEngine Load(string text)
    {
        var loaded = ProcedureEngine.Load([new SourceFile("tiny.yaml", text)]);
        Assert.Equal("", string.Concat(loaded.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return loaded.Engine!;
    }

    /// <summary>A scenario with rows that give the gap, in flow style.</summary>
    public static SourceFile Scenario(params string[] rows) => new("pan.yaml", $$$"""
        scenario: a pan
        vehicle: {parts: {pan: pan, cover: cover}}
        jobs: [ take_off ]
        facts: {pan.gap: "{gap}"}
        rows: [ {{{string.Join(", ", rows)}}} ]
        """);

    /// <summary>Its cases.</summary>
    public static IReadOnlyList<ScenarioCase> Rows(params string[] rows)
    {
        var set = ScenarioSet.Read(Engine, [Scenario(rows)]);
        Assert.Equal("", string.Concat(set.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return set.Cases;
    }
}
