using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Tests.Packs;

/// <summary>Packs as texts, for tests.</summary>
internal static class GivenPacks
{
    /// <summary>A pack that other packs of a test may use.</summary>
    public const string Base = """
        pack: base
        version: 1.0.0
        about: What all packs share
        places: [bay, under, bench]
        energies: [electrical, load]
        kinds:
          vehicle: {}
          starter: {text: starter motor}
          oil_pan: {}
          dust_cover: {}
          engine_mount: {}
          steering_link: {text: steering link, if_silent: unknown}
        aspects:
          vehicle.height: {states: [ground, raised], normal: ground}
          starter.place: {states: [fitted, off], normal: fitted}
          oil_pan.place: {states: [fitted, lowered, off], normal: fitted}
          oil_pan.flange: {states: [unchecked, checked], normal: unchecked, mark: yes}
        facts:
          starter.bolt_torque: {type: torque, range: 10..80 lb.ft, ask: "What torque do the bolts of the {it} take?"}
          starter.solenoid: {type: [on_starter, remote], ask: Where does the solenoid sit?}
          oil_pan.drop_available: {type: length, range: 0..12 in, ask: "How far does the {it} come down?", taken_in: [vehicle.height]}
          oil_pan.note: {type: text, ask: What else is to be seen?}
          oil_pan.dented: {type: yes_no, ask: "Is the {it} dented?"}
          oil_pan.pressure: {type: gauge_pressure, range: 0..100 psi, ask: What pressure is there?}
          oil_pan.drop_needed: {type: length, range: 0..12 in, derived: yes}
          oil_pan.rise: {type: length, range: 0..6 in, demand: yes}
        relations:
          covers: {of: [part, part], text: "{a} covers {b}"}
          traps: {of: [starter, dust_cover], text: "{a} traps {b}", if_silent: unknown}
        operations:
          raise:
            on: vehicle
            text: Raise the {it}
            change: {height: ground -> raised}
            undo: lower
            place: bay
            time: 5..10 min
          lower: {on: vehicle, text: "Lower the {it}", time: 5 min}
          remove_starter:
            on: starter
            text: Unbolt the {it}
            change: {place: fitted -> off}
            undo: fit_starter
            place: under
            time: 25..45 min
            hands: 2
            needs:
              - vehicle.height is raised
              - {state: oil_pan.place is fitted, way: off}
            moves: [it, dust_cover]
            energy: [electrical]
          fit_starter: {on: starter, text: "Fit the {it}", time: 25..50 min, figures: [it.bolt_torque]}
          remove_pan: {on: oil_pan, text: "Take the {it} down", change: {place: any -> off}, undo: fit_pan, place: under, time: 1..2 h}
          fit_pan: {on: oil_pan, text: "Fit the {it}", time: 1 h}
        causes:
          worn: {on: starter, text: "The {it} is worn"}
        jobs:
          replace_starter: {on: starter, text: "Replace the {it}", ends: [starter.place is fitted], do: ["remove_starter(it)"]}
          replace_mount: {on: engine_mount, text: "Replace the {it}"}
          inspect: {text: Look the vehicle over}
        rules:
          - rule: the pan needs to drop below the starter
            when: [oil_pan.dented is yes]
            then:
              - set: {oil_pan.drop_needed: 3 in}
              - at_least: {oil_pan.rise: 1 in}
            because: It has to come down past the starter.
            basis: common practice

        """;

    /// <summary>Reads packs named <c>a.yaml</c>, <c>b.yaml</c> and so on.</summary>
    public static (PackSet Packs, DiagnosticBag Bag) Read(params IEnumerable<string> texts)
    {
        var bag = new DiagnosticBag();
        var packs = PackReader.Read([.. texts.Select((text, index) => new SourceFile($"{(char)('a' + index)}.yaml", text))], bag);
        return (packs, bag);
    }

    /// <summary>What is complained about, as people see it.</summary>
    public static string Complaints(params IEnumerable<string> texts) => Read(texts).Bag.ToSnippets().TrimEnd('\n');

    /// <summary>A pack that uses the base pack.</summary>
    public static string Pack(string body, string uses = "base") =>
        $"pack: shop\nversion: 1.0.0\nabout: x\nuses: [{uses}]\n{body.ReplaceLineEndings("\n")}\n";
}
