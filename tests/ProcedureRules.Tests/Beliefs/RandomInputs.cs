using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>Random suppositions on a random world, with the statements that would amount to the same.</summary>
internal sealed class RandomInputs(RandomWorld random, Random dice)
{
    private readonly HashSet<object> _refined = [];
    private readonly IReadOnlyList<Atom.Related> _pairs = random.World.Believe().Network.AtomsOf<Atom.Related>();
    private int? _option;

    /// <summary>Any change of an input, also of what was known.</summary>
    public Supposition Any()
    {
        var world = random.World;
        switch (dice.Next(5))
        {
            case 0 or 1:
                var key = AnyOf(random.Facts.SelectMany(facts => facts).ToList());
                var said = Enumerable.Range(0, dice.Next(3)).Select(_ => new Observation(key, PointIn(Value.Unknown(key.Fact)), AnySource())).ToList();
                world.Observations.RemoveAll(observation => observation.Fact == key);
                world.Observations.AddRange(said);
                return new Supposition.Observed(key, said);
            case 2:
                var part = AnyOf(random.Parts.ToList());
                var exists = new Supposition.PartExists(part, (Truth)dice.Next(3), AnySource());
                world.PartStatements.RemoveAll(statement => ReferenceEquals(statement.Part, part));
                world.PartStatements.Add(new(part, exists.Truth, exists.Source));
                return exists;
            case 3:
                var pair = AnyOf(_pairs);
                var holds = new Supposition.RelationHolds(pair.Relation, pair.A, pair.B, (Truth)dice.Next(3), AnySource());
                world.Relations.RemoveAll(s => s.Relation == pair.Relation && s.A == pair.A && s.B == pair.B);
                world.Relations.Add(new(pair.Relation, pair.A, pair.B, holds.Truth, holds.Source));
                return holds;
            default:
                _option = dice.Next(3) is var option and < 2 ? option : null;
                return new Supposition.Takes(random.Choice, _option);
        }
    }

    /// <summary>The beliefs of the world as supposed by now, from its statements.</summary>
    public BeliefState BuildAnew() => random.World.Believe().With([new Supposition.Takes(random.Choice, _option)]);

    /// <summary>An answer to something that is open and has not been answered; null where nothing is left.</summary>
    public Supposition? Refinement(BeliefState beliefs)
    {
        var answers = new List<Func<Supposition>>();
        foreach (var part in random.Parts.Where(part => beliefs.Exists(part) == Truth.Unknown))
            answers.Add(() => new Supposition.PartExists(part, YesOrNo(), AnySource()));
        foreach (var pair in _pairs.Where(pair => IsStatedUnknown(pair) && !_refined.Contains(pair)))
            answers.Add(() => Once(pair, new Supposition.RelationHolds(pair.Relation, pair.A, pair.B, YesOrNo(), AnySource())));
        if (_option is null)
            answers.Add(() => new Supposition.Takes(random.Choice, _option = dice.Next(2)));
        foreach (var key in random.Facts.SelectMany(facts => facts).Where(key => !_refined.Contains(key) && IsOpen(beliefs, key)))
            answers.Add(() => Once(key, new Supposition.Observed(key, [.. Refined(beliefs, key)])));
        return answers.Count == 0 ? null : AnyOf(answers)();
    }

    private Supposition Once(object about, Supposition supposition)
    {
        _refined.Add(about);
        return supposition;
    }

    private bool IsStatedUnknown(Atom.Related pair)
    {
        var said = random.World.Relations.Where(s => s.Relation == pair.Relation && s.A == pair.A && s.B == pair.B).ToList();
        var best = said.Where(s => s.Source == said.Max(t => t.Source)).Select(s => s.Holds).Distinct().ToList();
        return best.Contains(Truth.Unknown) || best.Count > 1;
    }

    // What a rule surely says is known; something new observed on top of it would be a revision, not an answer.
    private static bool IsOpen(BeliefState beliefs, FactKey key) => !beliefs.Fact(key.Part, key.Fact).IsPoint
        && !beliefs.Network.RecordsWith<Conclusion.Set>()
            .Any(effect => effect.Effect.Fact == key && beliefs.Required(effect.Record, effect.Index) == Assurance.Sure);

    private IEnumerable<Observation> Refined(BeliefState beliefs, FactKey key)
    {
        var unknown = Value.Unknown(key.Fact);
        var said = beliefs.Observations(key);
        var silenced = said.Where(o => o.Value.Contains(unknown)).Select(o => o.Source).DefaultIfEmpty().Max();
        var known = said.Where(o => o.Source >= silenced && !o.Value.Contains(unknown)).ToList();
        if (known.Count == 0) return [new(key, PointIn(unknown), AnySource())];
        var top = known.Where(o => o.Source == known.Max(k => k.Source)).ToList();
        var common = top.Aggregate((Value?)top[0].Value, (value, o) => value?.Intersect(o.Value));
        Value? actual = common is { } agreed ? PointIn(agreed) : null;
        return top.Select(o => o with { Value = actual ?? PointIn(o.Value) });
    }

    private Value PointIn(Value value)
    {
        if (!value.Type.IsQuantity)
        {
            var words = Enumerable.Range(0, value.Type.Words.Count).Where(word => (value.Words >> word & 1) != 0).ToList();
            return Value.OfWords(value.Type, 1UL << AnyOf(words));
        }

        var (low, high) = (value.Quantity.Low, value.Quantity.High);
        var point = dice.Next(3) switch { 0 => low, 1 => high, _ => low + ((high - low) * dice.NextDouble()) };
        return Value.Of(value.Type, Quantity.Point(Math.Clamp(point, low, high), value.Quantity.Dimension));
    }

    private Truth YesOrNo() => dice.Next(2) == 0 ? Truth.No : Truth.Yes;

    private Source AnySource() => (Source)dice.Next(1, 5);

    private T AnyOf<T>(IReadOnlyList<T> items) => items[dice.Next(items.Count)];
}
