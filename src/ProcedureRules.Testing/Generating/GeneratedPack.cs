using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Generating;

/// <summary>A small pack that a generator made, and a sheet with one part of each of its kinds. It has no mistakes, and its needs do not bite each other.</summary>
public sealed class GeneratedPack
{
    private static readonly string[] Names = ["apron", "bracket", "cover", "duct", "fan", "guard"];
    private readonly List<string> _kinds;
    private readonly List<Rule> _rules;

    private GeneratedPack(List<string> kinds, List<Rule> rules) => (_kinds, _rules) = (kinds, rules);

    /// <summary>Its job.</summary>
    public static string Job => "renew_it";

    /// <summary>The pack as YAML.</summary>
    public string Pack => $$"""
        pack: made_up
        version: 1.0.0
        about: Made up.
        places: [bay]
        kinds:
          vehicle: {}
        {{Lines(_kinds.Select(kind => $"  {kind}: {{}}"))}}
        aspects:
          part.place: {states: [fitted, off], normal: fitted}
          part.unit: {states: [old, new], normal: old, mark: yes}
        facts:
        {{Lines(_kinds.Select(kind => $"  {kind}.stuck: {{type: yes_no, ask: \"Is the {kind} stuck?\"}}"))}}
        operations:
        {{Lines(_kinds.SelectMany(Operations))}}
        jobs:
          {{Job}}: {on: {{_kinds[^1]}}, text: "Renew the {it}", ends: [ it.unit is new ]}
        {{(_rules.Count == 0 ? "" : "rules:\n" + Lines(_rules.SelectMany((rule, number) => rule.Lines(number))))}}
        """;

    /// <summary>A sheet for it.</summary>
    public string Sheet => $"vehicle: Made up\nparts:\n{Lines(_kinds.Select(kind => $"  {kind}: {kind}"))}\n";

    /// <summary>Makes a pack; the same seed makes the same one.</summary>
    /// <param name="seed">What chance starts from.</param>
    public static GeneratedPack Make(int seed)
    {
        var random = new Random(seed);
        var kinds = Names.Take(random.Next(2, Names.Length + 1)).ToList();
        var rules = new List<Rule>();
        for (var count = random.Next(7); count > 0; count--)
        {
            // The first of two gives way to the second, so that no two parts wait for each other.
            var first = random.Next(kinds.Count - 1);
            rules.Add(new Rule(kinds[random.Next(first + 1, kinds.Count)], kinds[first], random.Next(3) == 0, random.Next(3) == 0));
        }

        return new GeneratedPack(kinds, rules);
    }

    /// <summary>Loads it.</summary>
    public LoadResult Load() => ProcedureEngine.Load([new SourceFile("made_up.yaml", Pack)]);

    /// <summary>Smaller packs that are like it: a rule or a kind less.</summary>
    public IEnumerable<GeneratedPack> Smaller()
    {
        foreach (var rule in _rules) yield return new(_kinds, [.. _rules.Where(other => !ReferenceEquals(other, rule))]);
        if (_kinds.Count < 3) yield break;
        foreach (var kind in _kinds) yield return new([.. _kinds.Where(other => other != kind)], [.. _rules.Where(rule => rule.Part != kind && rule.First != kind)]);
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Pack}\n---\n{Sheet}";

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);

    private static IEnumerable<string> Operations(string kind) =>
    [
        $"  remove_{kind}: {{on: {kind}, text: \"Remove the {{it}}\", change: {{place: fitted -> off}}, undo: fit_{kind}, place: bay, time: 5 min}}",
        $"  fit_{kind}: {{on: {kind}, text: \"Fit the {{it}}\", time: 5 min}}",
        $"  renew_{kind}: {{on: {kind}, text: \"Renew the {{it}}\", change: {{unit: old -> new}}, needs: [ it.place is off ], place: bay, time: 5 min}}",
    ];

    private sealed record Rule(string Part, string First, bool OnlyIfStuck, bool Warns)
    {
        public IEnumerable<string> Lines(int number) =>
        [
            $"  - rule: the {First} gives way to the {Part}, {number}",
            "    for: {s: step}",
            $"    when: [ s leaves {Part}.place fitted{(OnlyIfStuck ? $", {First}.stuck is yes" : "")} ]",
            $"    then: [ {{need: {First}.place is off}}{(Warns ? $", {{warning: Mind the {First}}}" : "")} ]",
            "    because: It is in the way.",
            "    basis: common practice",
        ];
    }
}
