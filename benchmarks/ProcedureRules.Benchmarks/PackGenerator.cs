using System.Globalization;
using System.Text;

namespace ProcedureRules.Benchmarks;

/// <summary>
/// Makes a pack of N rules of two or three keyed conditions (equality on one of 200 keys, a numeric test, a join), each deriving one fact,
/// and a vehicle of 300 facts: 50 parts, 50 relations, 200 readings. Every fourth rule chains on what an earlier one derives. The same for the
/// same N.
/// </summary>
internal sealed class PackGenerator
{
    /// <summary>How many parts there are, each of a kind of its own.</summary>
    public const int Parts = 50;

    private const int Relations = 50;
    private const int LevelsOfAPart = 4;
    private const int HighestLevel = 99;
    private const int Chained = 4;

    // A fixed seed makes the pack the same in every run; nothing here is secret.
#pragma warning disable CA5394
    private readonly Random _random = new(20_240_229);
    private readonly List<(int From, int To)> _feeds = [];
    private readonly int[] _resultsOf = new int[Parts];
    private readonly int _percentHolding;

    /// <param name="rules">How many rules.</param>
    /// <param name="percentHolding">How many of a hundred rules hold on the vehicle.</param>
    public PackGenerator(int rules, int percentHolding = 100)
    {
        _percentHolding = percentHolding;
        while (_feeds.Count < Relations)
        {
            var pair = (_random.Next(Parts), _random.Next(Parts));
            if (pair.Item1 != pair.Item2 && !_feeds.Contains(pair)) _feeds.Add(pair);
        }
        Levels = [.. Enumerable.Range(0, Parts * LevelsOfAPart).Select(_ => _random.Next(50, HighestLevel + 1))];
        Rules = [.. Enumerable.Range(0, rules).Select(MakeRule)];
        Pack = WritePack();
        Vehicle = WriteVehicle();
    }

    /// <summary>The pack as text.</summary>
    public string Pack { get; }

    /// <summary>The vehicle sheet as text.</summary>
    public string Vehicle { get; }

    /// <summary>The rules as data, for the baseline.</summary>
    public IReadOnlyList<GeneratedRule> Rules { get; }

    /// <summary>Pairs of parts in the relation.</summary>
    public IReadOnlyList<(int From, int To)> Feeds => _feeds;

    /// <summary>The levels in mm, by key.</summary>
    public IReadOnlyList<int> Levels { get; }

    /// <summary>The part that a key's reading is of.</summary>
    public static int PartOf(int key) => key / LevelsOfAPart;

    private GeneratedRule MakeRule(int number)
    {
        var threshold = _random.Next(100) < _percentHolding ? _random.Next(1, 50) : 99;
        if (number % 3 == 0)
        {
            var kind = number / 3 % Parts;
            return Chain(new GeneratedRule(number, kind, null, KeyOf(kind), threshold, KeyOf(kind), null, _resultsOf[kind]++));
        }
        var (from, to) = _feeds[_random.Next(Relations)];
        return Chain(new GeneratedRule(number, from, to, KeyOf(to), threshold, number % 3 == 1 ? null : KeyOf(from), null, _resultsOf[from]++));
    }

    private GeneratedRule Chain(GeneratedRule rule) => rule.Number % Chained == 0 && rule.Result > 0
        ? rule with { OwnKey = null, OwnResult = _random.Next(rule.Result) }
        : rule;

    private int KeyOf(int kind) => (kind * LevelsOfAPart) + _random.Next(LevelsOfAPart);
#pragma warning restore CA5394

    private string WritePack()
    {
        var text = new StringBuilder("""
            pack: generated
            version: 1.0.0
            about: Rules without meaning, to measure by.
            places: [bay]
            kinds:
              vehicle: {text: vehicle}
              unit: {text: unit}

            """.ReplaceLineEndings("\n"));
        for (var kind = 0; kind < Parts; kind++) text.Append(Invariant($"  unit_{kind}: {{is: unit, text: unit {kind}}}\n"));
        text.Append("""
            relations:
              feeds: {of: [unit, unit], text: "{a} feeds {b}"}
            facts:

            """.ReplaceLineEndings("\n"));
        for (var key = 0; key < Levels.Count; key++)
            text.Append(Invariant($"  unit_{PartOf(key)}.{LevelOf(key)}: {{type: length, range: 0..100 mm, ask: \"How high does it stand?\"}}\n"));
        foreach (var rule in Rules) text.Append(Invariant($"  unit_{rule.Kind}.{ResultOf(rule.Result)}: {{type: yes_no, derived: yes}}\n"));
        text.Append("rules:\n");
        foreach (var rule in Rules) text.Append(WriteRule(rule));
        return text.ToString();
    }

    private static string WriteRule(GeneratedRule rule)
    {
        // What no relation binds is named by its kind.
        var x = rule.FedKind is null ? Invariant($"unit_{rule.Kind}") : "x";
        var variables = rule.FedKind is { } fed ? Invariant($"    for: {{x: unit_{rule.Kind}, y: unit_{fed}}}\n") : "";
        var join = rule.FedKind is null ? "" : "\"feeds(x, y)\", ";
        var level = Invariant($"\"{(rule.FedKind is null ? x : "y")}.{LevelOf(rule.Key)} > {rule.Threshold} mm\"");
        var own = rule.OwnKey is { } key ? Invariant($", \"{x}.{LevelOf(key)} > 10 mm\"")
            : rule.OwnResult is { } result ? Invariant($", \"{x}.{ResultOf(result)} is yes\"")
            : "";
        return Invariant($$"""
              - rule: rule {{rule.Number}}
            {{variables}}    when: [ {{join}}{{level}}{{own}} ]
                then:
                  - set: {{{x}}.{{ResultOf(rule.Result)}}: yes}
                because: It was generated.
                basis: none

            """).ReplaceLineEndings("\n");
    }

    private string WriteVehicle()
    {
        var text = new StringBuilder("vehicle: Generated\nparts:\n");
        for (var part = 0; part < Parts; part++) text.Append(Invariant($"  p{part}: unit_{part}\n"));
        text.Append("relations:\n");
        foreach (var (from, to) in _feeds) text.Append(Invariant($"  - feeds(p{from}, p{to})\n"));
        text.Append("facts:\n");
        for (var key = 0; key < Levels.Count; key++) text.Append(Invariant($"  p{PartOf(key)}.{LevelOf(key)}: {Levels[key]} mm\n"));
        return text.ToString();
    }

    /// <summary>The name of a key's reading.</summary>
    public static string LevelOf(int key) => Invariant($"level_{key}");

    /// <summary>The name of what a rule derives.</summary>
    public static string ResultOf(int result) => Invariant($"result_{result}");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
