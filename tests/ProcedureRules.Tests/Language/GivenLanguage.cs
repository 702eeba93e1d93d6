using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;
using Xunit;

namespace ProcedureRules.Tests.Language;

/// <summary>A small vocabulary, and rules over it as texts.</summary>
internal static class GivenLanguage
{
    /// <summary>The names that the tests of this folder use.</summary>
    public const string Shop = """
        pack: shop
        version: 1.0.0
        about: What the tests talk about
        places: [bay, under]
        energies: [electrical, load]
        kinds:
          vehicle: {}
          engine: {}
          starter: {text: starter motor}
          oil_pan: {text: oil pan}
          dust_cover: {text: dust cover}
          fan_shroud: {text: fan shroud}
          oil_cooler: {text: oil cooler, if_silent: unknown}
        aspects:
          part.place: {states: [fitted, off], normal: fitted}
          vehicle.height: {states: [ground, raised], normal: ground}
          engine.hold: {states: [mounts, jack, hoist, blocks], normal: mounts}
          engine.joint:
            states: [fastened, free]
            normal: fastened
            while:
              free: [ "it.hold is [jack, hoist, blocks]", vehicle.height is raised ]
        facts:
          oil_pan.drop: {type: length, range: 0..12 in, ask: "How far does the {it} drop?", how: "Lower the {it} and measure."}
          oil_pan.needed: {type: length, range: 0..12 in, derived: yes}
          oil_pan.gap: {type: length, range: 0..1 in, ask: What gap is there?}
          oil_pan.note: {type: text, ask: What else is seen?}
          oil_pan.dented: {type: yes_no, ask: Is it dented?}
          oil_pan.bolts: {type: count, range: 4..40, ask: How many bolts?}
          oil_pan.torque: {type: torque, range: 5..40 lb.ft, ask: What torque?}
          oil_pan.soak: {type: duration, range: 0..2 h, derived: yes}
          oil_pan.label: {type: text, derived: yes}
          engine.rise: {type: length, range: 0..6 in, demand: yes}
          engine.oil: {type: gauge_pressure, range: 0..100 psi, ask: What oil pressure?}
          engine.intake: {type: absolute_pressure, range: 0..40 psia, ask: What intake pressure?}
          engine.warm: {type: temperature, range: -40..300 degF, ask: How warm?}
          engine.off_for: {type: duration, range: 0..30 d, ask: How long has it been off?}
          engine.spent: {type: energy, range: 0..100 J, ask: What energy?}
          fan_shroud.pieces: {type: [one_piece, two_piece, none], ask: How many pieces?}
          fan_shroud.spare: {type: [one_piece, two_piece, none], ask: And the spare?}
          fan_shroud.rust: {type: [none, light, heavy], ask: How rusty?}
          fan_shroud.fixed: {type: yes_no, derived: yes}
        relations:
          covers: {of: [part, part], text: "{a} covers {b}"}
          traps: {of: [starter, dust_cover], text: "{a} traps {b}", if_silent: unknown}
          hangs_on: {of: [part, engine], text: "{a} hangs on {b}", holds_while: [ "a.place is fitted" ]}
        operations:
          raise: {on: vehicle, text: "Raise the {it}", change: {height: ground -> raised}, undo: lower, place: bay, time: 5..10 min}
          lower: {on: vehicle, text: "Lower the {it}", time: 5 min}
          remove_starter:
            on: starter
            text: Unbolt the {it}
            change: {place: fitted -> off}
            undo: fit_starter
            place: under
            time: 25..45 min
            needs:
              - vehicle.height is raised
              - {state: it.place is fitted, way: off}
              - {state: fan_shroud.place is fitted, way: on}
            tools: [ "3/8 in drive ratchet" ]
            supplies: [ "Rag for the {it}" ]
            detail: [ "Beside the {oil_pan}", "Pan bolts: {oil_pan.torque}" ]
            figures: [ oil_pan.torque ]
            because: The {it} is in the way.
            basis: common practice
          fit_starter: {on: starter, text: "Fit the {it}", time: 25 min}
          remove_pan: {on: oil_pan, text: "Take the {it} down", change: {place: fitted -> off}, undo: fit_pan, place: under, time: 1..2 h}
          fit_pan: {on: oil_pan, text: "Fit the {it}", time: 1 h}
          clean: {on: part, text: "Clean the {it}", place: bay, time: 5 min}
        causes:
          worn: {on: starter, text: "The {it} is worn"}
        jobs:
          replace_pan:
            on: oil_pan
            text: Replace the {it}
            ends: [ it.place is fitted, starter.place is fitted ]
            pass: [ it.place is off ]
            do: [ "clean(it)", "clean(starter)" ]
            know: [ it.torque ]
            variants:
              - {if: fan_shroud.pieces is one_piece, text: with the shroud, do: [ "clean(fan_shroud)" ], ends: [ fan_shroud.place is fitted ]}
          inspect: {text: Look the vehicle over}

        """;

    /// <summary>Compiles the vocabulary with more below it, such as <c>rules:</c>.</summary>
    public static (RuleBase Rules, DiagnosticBag Bag) Compile(string more, FunctionRegistry? functions = null)
    {
        var bag = new DiagnosticBag();
        var packs = PackReader.Read([new SourceFile("shop.yaml", Shop), new SourceFile("more.yaml", More(more))], bag);
        return (RuleCompiler.Compile(packs, functions, bag), bag);
    }

    /// <summary>The only rule, made of conditions and conclusions as lists of YAML entries.</summary>
    public static CompiledRule Rule(string variables, string when, string then, FunctionRegistry? functions = null)
    {
        var (rules, bag) = Compile(RuleText(variables, when, then), functions);
        Assert.Equal("", bag.HasErrors ? bag.ToSnippets() : "");
        return rules.Rules[0];
    }

    /// <summary>What is complained about in a rule, as people see it.</summary>
    public static string Complaints(string variables, string when, string then) => Complaints(RuleText(variables, when, then));

    /// <summary>What is complained about, as people see it.</summary>
    public static string Complaints(string more) =>
        string.Join('\n', Compile(more).Bag.Ordered().Where(d => d.Span.File?.Path == "more.yaml").Select(d => d.ToSnippet().TrimEnd('\n')));

    public static string RuleText(string variables, string when, string then) => $$"""
        rules:
          - rule: r
            for: {{{variables}}}
            when: [ {{when}} ]
            then: [ {{then}} ]
            because: so it is
            basis: common practice
        """;

    private static string More(string more) => $"pack: more\nversion: 1.0.0\nabout: x\nuses: [shop]\n{more.ReplaceLineEndings("\n")}\n";
}
