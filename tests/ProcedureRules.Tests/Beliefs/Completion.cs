using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using Record = ProcedureRules.Inference.Record;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>
/// One case that the known facts of a random world leave open, reckoned out with two truth values and no network: every unknown has an
/// answer, every interval a figure, every moment is met or not. The oracle that labels are compared with.
/// </summary>
internal sealed class Completion : IBeliefs
{
    private readonly RandomWorld _random;
    private readonly BeliefState _partial;
    private readonly Random _dice;
    private readonly Dictionary<FactKey, (Value Merged, Value Actual, Source Rank)> _facts = [];
    private readonly Dictionary<FactKey, (Quantity Merged, Quantity Actual, Source Rank)> _demands = [];
    private readonly Dictionary<Atom, Source> _stated = [];
    private readonly Dictionary<Atom, Source> _pairRanks = [];
    private readonly HashSet<Atom> _true = [];
    private readonly HashSet<Atom> _given;
    private readonly HashSet<Record> _unmet = [];

    public Completion(RandomWorld random, BeliefState partial, Random dice)
    {
        _random = random;
        _partial = partial;
        _dice = dice;
        foreach (var part in random.Parts) Decide(new Atom.Exists(part), partial.Exists(part), random.World.PartStatements
            .Where(statement => ReferenceEquals(statement.Part, part)).Select(statement => statement.Source));
        foreach (var group in random.World.Relations.GroupBy(s => new Atom.Related(s.Relation, s.A, s.B)))
        {
            var best = group.Max(statement => statement.Source);
            var truths = group.Where(statement => statement.Source == best).Select(statement => statement.Holds).Distinct().ToList();
            Decide(group.Key, truths.Count == 1 ? truths[0] : Truth.Unknown, [best]);
        }

        var option = dice.Next(3);
        if (option < 2) _true.Add(new Atom.Chosen(random.Choice, option));
        foreach (var record in random.World.Records)
            if (record.Moments.Count > 0 && dice.Next(2) == 0) _unmet.Add(record);
        _given = [.. _true];
        foreach (var pair in random.Pairs[0]) _pairRanks[pair] = _stated.GetValueOrDefault(pair, Source.Stated);
        SettleFacts(0);
        for (var stage = 0; stage < RandomWorld.Stages; stage++)
        {
            SettleAtoms(stage);
            SettlePairRanks(stage + 1);
            SettleFacts(stage + 1);
        }
    }

    public bool IsTrue(Atom atom) => _true.Contains(atom);

    public bool Holds(Record record) => !_unmet.Contains(record) && record.Premises.All(_true.Contains) && PassesTests(record);

    public (Value Merged, Source Rank) Merged(FactKey key) => (_facts[key].Merged, _facts[key].Rank);

    public Quantity MergedDemand(FactKey key) => _demands[key].Merged;

    public (double Least, double Most) Band(FactKey key)
    {
        var values = Contributions<Conclusion.Demand>(key).ToList();
        return (
            values.Where(c => !c.Conclusion.IsAtMost).Select(c => c.Value.Quantity.Low).DefaultIfEmpty(double.NegativeInfinity).Max(),
            values.Where(c => c.Conclusion.IsAtMost).Select(c => c.Value.Quantity.High).DefaultIfEmpty(double.PositiveInfinity).Min());
    }

    public Value Fact(Part part, FactDefinition fact) => _facts[new(part, fact)].Actual;

    public Quantity Demanded(Part part, FactDefinition fact) => _demands[new(part, fact)].Actual;

    public Quantity Allowed(Part part, FactDefinition fact) => Quantity.Anything(fact.Type.Dimension!.Value);

    public Truth Related(Relation relation, Part a, Part b) => Kleene.Of(IsTrue(new Atom.Related(relation, a, b)));

    public Truth Exists(Part part) => Kleene.Of(IsTrue(new Atom.Exists(part)));

    public IReadOnlyList<Part> PartsOf(Kind kind) => [.. _random.Parts.Where(part => part.Kind.IsA(kind))];

    private bool PassesTests(Record record) => record.Tests.All(test => test.Evaluate(this, record.Binding) switch
    {
        Truth.Yes => true,
        Truth.No => false,
        _ => throw new InvalidOperationException($"{test.Text} is open in a completion"),
    });

    private void Decide(Atom atom, Truth truth, IEnumerable<Source> sources)
    {
        _stated[atom] = truth == Truth.Unknown ? AnySource() : sources.Max();
        if (truth == Truth.Yes || (truth == Truth.Unknown && _dice.Next(2) == 0)) _true.Add(atom);
    }

    private void SettleAtoms(int stage)
    {
        bool changed;
        do
        {
            changed = false;
            foreach (var record in RecordsOf(stage).Where(Holds))
                foreach (var effect in record.Effects)
                    changed |= effect.Atom is not null && _true.Add(effect.Atom);
        }
        while (changed);
    }

    // The best support counts, and a support is as good as its weakest premise: raised from nothing.
    private void SettlePairRanks(int stage)
    {
        var pairs = _random.Pairs[stage].Where(pair => _true.Contains(pair)).ToList();
        foreach (var pair in _random.Pairs[stage])
            _pairRanks[pair] = !_true.Contains(pair) ? _stated.GetValueOrDefault(pair, Source.Stated) : Source.None;
        bool changed;
        do
        {
            changed = false;
            foreach (var pair in pairs)
            {
                var derived = RecordsOf(stage - 1).Where(Holds)
                    .SelectMany(record => record.Effects.Where(effect => Equals(effect.Atom, pair)).Select(_ => RankOf(record, [])));
                var rank = derived.Append(_given.Contains(pair) ? _stated[pair] : Source.None).Max();
                if (rank == _pairRanks[pair]) continue;
                _pairRanks[pair] = rank;
                changed = true;
            }
        }
        while (changed);
    }

    private void SettleFacts(int stage)
    {
        foreach (var key in _random.Facts[stage])
        {
            var (merged, rank) = Merge(key);
            _facts[key] = (merged, PointIn(merged), rank);
            if (!key.Fact.Type.IsQuantity) continue;
            var demand = Demand(key, out var demandRank);
            _demands[key] = (demand, PointIn(Value.Of(key.Fact.Type, demand)).Quantity, demandRank);
        }
    }

    private (Value Merged, Source Rank) Merge(FactKey key)
    {
        var said = Contributions<Conclusion.Set>(key).Select(c => (c.Value, c.Rank, IsConstant: !c.Conclusion.Value.Reads(new([]), PartsOf).Any())).ToList();
        var known = _random.World.Observations.Where(o => o.Fact == key).ToList();
        var silenced = known.Where(o => o.Value.Contains(Value.Unknown(key.Fact))).Select(o => o.Source).DefaultIfEmpty().Max();
        known.RemoveAll(o => o.Source < silenced || o.Value.Contains(Value.Unknown(key.Fact)));

        // What is observed is one figure in all observations that agree, and in what the pack says for good; contradicting ones have each their own.
        var best = known.Select(o => o.Source).DefaultIfEmpty().Max();
        var agreeing = known.Where(o => o.Source == best).Select(o => o.Value).Concat(said.Where(s => s.IsConstant && s.Rank == best).Select(s => s.Value)).ToList();
        var common = agreeing.Count == 0 ? null : agreeing.Aggregate((Value?)agreeing[0], (a, b) => a?.Intersect(b));
        Value? actual = common is { } value ? PointIn(value) : null;
        foreach (var o in known) said.Add((o.Source == best && actual is { } point ? point : PointIn(o.Value), o.Source, false));
        var isSureWithout = _partial.Network.RecordsWith<Conclusion.Set>()
            .Any(effect => effect.Effect.Fact == key && _partial.Required(effect.Record, effect.Index) == Assurance.Sure);
        if (known.Count == 0 && (said.Count == 0 || (!isSureWithout && _dice.Next(2) == 0)))
            said.Add((PointIn(Value.Unknown(key.Fact)), AnySource(), false));

        var top = said.Max(s => s.Rank);
        var winners = said.Where(s => s.Rank == top).Select(s => s.Value).ToList();
        return (winners.Aggregate((Value?)winners[0], (a, b) => a?.Intersect(b)) ?? winners.Aggregate((a, b) => a.Hull(b)), top);
    }

    private Quantity Demand(FactKey key, out Source rank)
    {
        var demands = Contributions<Conclusion.Demand>(key).ToList();
        rank = demands.Select(demand => demand.Rank).Append(Source.Measured).Min();
        var least = demands.Where(demand => !demand.Conclusion.IsAtMost).Select(demand => demand.Value.Quantity).ToList();
        var floor = key.Fact.Plausible!.Value;
        return least.Append(Quantity.Point(floor.Low, floor.Dimension)).Aggregate(Quantity.Max);
    }

    private IEnumerable<(TConclusion Conclusion, Value Value, Source Rank)> Contributions<TConclusion>(FactKey key)
        where TConclusion : Conclusion
    {
        foreach (var record in _random.World.Records)
        {
            if (!record.Effects.Any(effect => effect.Fact == key && effect.Conclusion is TConclusion) || !Holds(record)) continue;
            foreach (var effect in record.Effects)
            {
                if (effect.Fact != key || effect.Conclusion is not TConclusion conclusion) continue;
                var expression = conclusion is Conclusion.Set set ? set.Value : ((Conclusion.Demand)(Conclusion)conclusion).Value;
                var value = expression.Evaluate(this, record.Binding);
                yield return (conclusion, value, RankOf(record, expression.Reads(record.Binding, PartsOf)));
            }
        }
    }

    private Source RankOf(Record record, IEnumerable<Reading> valueReads)
    {
        var reads = record.Tests.SelectMany(test => test.Reads(record.Binding, PartsOf)).Concat(valueReads).ToList();
        var seen = reads.OfType<Reading.OfFact>().Select(read => read.Key.Part).ToList();
        var ranks = reads.Select(read => read switch
        {
            Reading.OfFact fact => _facts[fact.Key].Rank,
            Reading.OfDemand demand => _demands[demand.Key].Rank,
            Reading.OfRelation related => _pairRanks[new Atom.Related(related.Relation, related.A, related.B)],
            _ => _stated[new Atom.Exists(((Reading.OfPart)read).Part)],
        }).Concat(record.Premises.OfType<Atom.Related>().Select(pair => _pairRanks[pair]));
        var evidence = ranks.ToList();
        var parts = record.Premises.OfType<Atom.Exists>().Where(exists => !seen.Contains(exists.Part)).Select(exists => _stated[exists]);
        return evidence.Concat(parts).Append(evidence.Count > 0 ? Source.Measured : Source.Stated).Min();
    }

    private IEnumerable<Record> RecordsOf(int stage) => _random.World.Records.Where(record => _random.StageOf[record] == stage);

    private Value PointIn(Value value)
    {
        if (!value.Type.IsQuantity)
        {
            var words = Enumerable.Range(0, value.Type.Words.Count).Where(word => (value.Words >> word & 1) != 0).ToList();
            return Value.OfWords(value.Type, 1UL << words[_dice.Next(words.Count)]);
        }

        var (low, high) = (value.Quantity.Low, value.Quantity.High);
        var point = _dice.Next(3) switch { 0 => low, 1 => high, _ => low + ((high - low) * _dice.NextDouble()) };
        return Value.Of(value.Type, Quantity.Point(Math.Clamp(point, low, high), value.Quantity.Dimension));
    }

    private Source AnySource() => (Source)_dice.Next(1, 5);
}
