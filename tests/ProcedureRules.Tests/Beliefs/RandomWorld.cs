using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using Record = ProcedureRules.Inference.Record;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>
/// A random small world in stages: the records of a stage read what earlier stages settle, and may form rings through premises among
/// themselves; so that no ring goes through anything read.
/// </summary>
internal sealed class RandomWorld
{
    public const int Stages = 3;
    private readonly Random _random;
    private readonly List<Part> _parts = [];

    public RandomWorld(int seed, int size)
    {
        _random = new(seed);
        Relation = World.Relation("joined");
        foreach (var (name, exists) in new[] { ("a", Truth.Yes), ("b", Truth.Unknown), ("c", Truth.Yes) })
            _parts.Add(World.Part(name, exists, AnySource()));
        for (var stage = 0; stage <= Stages; stage++) AddInputs(stage);
        for (var stage = 0; stage < Stages; stage++)
        {
            var count = _random.Next(1, size + 2);
            for (var i = 0; i < count; i++) AddRecord(stage);
        }
    }

    public World World { get; } = new();

    public Relation Relation { get; }

    public ChoiceKey Choice { get; } = new ChoiceKey.OfWays(new Part("vehicle", new() { Name = "vehicle", Text = "" }), Beliefs.World.Height, StateSet.Of(1));

    public List<FactKey>[] Facts { get; } = [[], [], [], []];

    public List<Atom.Related>[] Pairs { get; } = [[], [], [], []];

    public Dictionary<Record, int> StageOf { get; } = [];

    public IEnumerable<Part> Parts => _parts.Prepend(World.Vehicle);

    private static readonly int[] Thresholds = [2, 5, 8];

    private void AddInputs(int stage)
    {
        Facts[stage].Add(World.YesNo($"flag_{stage}", AnyPart()));
        Facts[stage].Add(World.Gap($"gap_{stage}", AnyPart()));
        if (stage == 0) Facts[stage].Add(World.Gap("other_gap", AnyPart()));

        foreach (var fact in Facts[stage])
        {
            var observations = Math.Max(0, _random.Next(stage == 0 ? 3 : 5) - (stage == 0 ? 0 : 2));
            for (var i = 0; i < observations; i++) World.Observe(fact, AnyValue(fact), AnySource());
        }

        foreach (var (a, b) in new[] { (0, 1), (1, 2) })
        {
            var pair = stage % 2 == 0 ? (_parts[a], _parts[b]) : (_parts[b], _parts[a]);
            if (stage > 1) pair = (pair.Item1, World.Part($"p_{stage}_{a}"));
            Pairs[stage].Add(new(Relation, pair.Item1, pair.Item2));
            if (_random.Next(3) > 0) World.State(Relation, pair.Item1, pair.Item2, (Truth)_random.Next(3), AnySource());
        }
    }

    private void AddRecord(int stage)
    {
        var premises = new List<Atom>();
        for (var i = _random.Next(3); i > 0; i--) premises.Add(AnyPremise(stage));
        var tests = new List<Test>();
        for (var i = _random.Next(3); i > 0; i--) tests.Add(AnyTest(stage, 1));
        var effects = new List<Effect>();
        for (var i = _random.Next(1, 3); i > 0; i--) effects.Add(AnyEffect(stage));
        var record = World.Rule(premises, tests, _random.Next(8) == 0, [.. effects]);
        StageOf[record] = stage;
    }

    private Atom AnyPremise(int stage) => _random.Next(7) switch
    {
        0 => new Atom.Exists(AnyPart()),
        1 => AnyPair(_random.Next(stage + 2)),
        2 => new Atom.Open(Choice),
        3 => new Atom.Chosen(Choice, _random.Next(2)),
        _ => Proposition(_random.Next(stage + 1)),
    };

    private Test AnyTest(int stage, int depth)
    {
        var at = _random.Next(stage + 1);
        switch (_random.Next(depth == 0 ? 5 : 8))
        {
            case 0 or 1: return Say.Yes(AnyFact(at, flag: true));
            case 2: return Say.Less(AnyFact(at, flag: false), AnyOf(Thresholds));
            case 3: return Say.DemandedLess(AnyFact(at, flag: false), AnyOf(Thresholds));
            case 4:
                var pair = AnyPair(at);
                return _random.Next(3) == 0 ? Say.Has(AnyPart()) : Say.Holds(pair.Relation, pair.A, pair.B);
            case 5: return Say.Not(AnyTest(stage, depth - 1));
            case 6: return Say.And(AnyTest(stage, depth - 1), AnyTest(stage, depth - 1));
            default: return Say.Or(AnyTest(stage, depth - 1), AnyTest(stage, depth - 1));
        }
    }

    private Effect AnyEffect(int stage)
    {
        var ifUnknown = (IfUnknown)_random.Next(1, 4);
        switch (_random.Next(10))
        {
            case 0: return Beliefs.World.Conclude(AnyPair(stage + 1), ifUnknown);
            case 1: return Beliefs.World.AtLeast(AnyFact(stage + 1, flag: false), AnyExpression(stage));
            case 2: return Beliefs.World.AtMost(AnyFact(stage + 1, flag: false), AnyExpression(stage));
            case 3 or 6: return Beliefs.World.Set(AnyFact(stage + 1, flag: false), AnyExpression(stage));
            case 4:
                var flag = AnyFact(stage + 1, flag: true);
                var value = Value.Of(_random.Next(2) == 0);
                return Beliefs.World.Set(flag, _random.Next(2) == 0
                    ? Say.Constant(value)
                    : Say.If(AnyTest(stage, 0), value, Value.Of(!value.Equals(Value.Of(true)))));
            case 5 when stage == 0: return Beliefs.World.Conclude(new Atom.Open(Choice), ifUnknown);
            default: return Beliefs.World.Conclude(Proposition(stage), ifUnknown);
        }
    }

    private ValueExpression AnyExpression(int stage) => _random.Next(4) switch
    {
        0 => Say.Constant(AnyGap()),
        1 => Say.Demanded(AnyFact(_random.Next(stage + 1), flag: false)),
        2 => Say.If(AnyTest(stage, 0), AnyGap(), AnyGap()),
        _ => Say.Plus(AnyFact(_random.Next(stage + 1), flag: false), _random.Next(3)),
    };

    private Atom Proposition(int stage) => World.Does($"p_{stage}_{_random.Next(3)}");

    private Atom.Related AnyPair(int stage) => AnyOf(Pairs[stage]);

    private FactKey AnyFact(int stage, bool flag) => AnyOf(Facts[stage].FindAll(fact => fact.Fact.Type.IsYesNo == flag));

    private Value AnyValue(FactKey fact) => fact.Fact.Type.IsYesNo
        ? Value.OfWords(FactType.YesNo, (ulong)_random.Next(1, 4))
        : AnyGap();

    private Value AnyGap()
    {
        // Beyond the plausible range, too: a rule may know better.
        var low = _random.Next(12);
        return Beliefs.World.Millimetres(low, _random.Next(2) == 0 ? low : _random.Next(low, 14));
    }

    private Part AnyPart() => AnyOf(_parts);

    // Few sources, so that ranks meet.
    private Source AnySource() => _random.Next(4) == 0 ? (Source)_random.Next(1, 5) : Source.Stated;

    private T AnyOf<T>(IReadOnlyList<T> items) => items[_random.Next(items.Count)];
}
