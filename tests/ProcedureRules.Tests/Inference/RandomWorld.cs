using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Tests.Inference;

/// <summary>A random rule base over the bench's vocabulary, and random situations that grow and shrink.</summary>
internal sealed class RandomWorld
{
    private readonly Bench _bench = new();
    private readonly Part[] _parts;
    private readonly HashSet<Part> _present = [];
    private readonly HashSet<(Relation, Part, Part)> _relations = [];
    private readonly HashSet<Part> _jobs = [];
    private readonly Dictionary<Part, string> _states = [];

    public RandomWorld(byte[] rules, byte[] start, bool hasRings = false)
    {
        _parts =
        [
            _bench.Part("vehicle", _bench.Vehicle), _bench.Part("box", _bench.Box), _bench.Part("crate", _bench.Crate),
            _bench.Part("lid", _bench.Lid), _bench.Part("other_lid", _bench.Lid),
        ];
        var remove = _bench.Operation("remove", _bench.Root, ["fitted", "loose"], "off", touches: [_bench.Lid], movesIt: true);
        _bench.Operation("refit", _bench.Root, ["off"], "before", remove);
        var loosen = _bench.Operation("loosen", _bench.Box, ["fitted"], "loose", moves: [_bench.Crate]);
        _bench.Operation("tighten", _bench.Box, ["loose"], "fitted", loosen);
        _bench.Operation("break", _bench.Box, ["loose"], "off");
        if (hasRings) AddRings(remove);
        var dice = new Dice(rules);
        for (var i = 0; i < 12 && (i == 0 || !dice.IsSpent); i++) AddRule(dice, $"rule {i}");
        Rules = _bench.Build();
        var first = new Dice(start);
        while (!first.IsSpent) Change(first);
    }

    public RuleBase Rules { get; }

    public static IReadOnlyList<Predicate> OnPart(Bench bench) =>
        [Bench.IsA(bench.Root), Bench.IsA(bench.Box), Bench.IsA(bench.Lid), new(PredicateSort.Job, "renew")];

    /// <summary>Adds or takes away one part, relation, job or state.</summary>
    public void Change(Dice dice)
    {
        var part = dice.Pick(_parts);
        switch (dice.Throw(6))
        {
            case 0 or 1:
                if (!_present.Remove(part)) _present.Add(part);
                break;
            case 2 or 3:
                var relation = (dice.Throw(2) == 0 ? _bench.Covers : _bench.Joins, part, dice.Pick(_parts));
                if (!_relations.Remove(relation)) _relations.Add(relation);
                break;
            case 4:
                if (!_jobs.Remove(part)) _jobs.Add(part);
                break;
            default:
                _states[part] = dice.Pick(_bench.Place.States);
                break;
        }
    }

    public Situation Now(Func<IEnumerable<Part>, IEnumerable<Part>>? order = null) => _bench.Situation(
        Rules,
        (order ?? (parts => parts))(_parts.Where(_present.Contains)),
        _relations,
        _jobs,
        _states.Select(state => (state.Key, state.Value)));

    /// <summary>Relations that run in circles, and a step that calls for itself.</summary>
    private void AddRings(Operation remove)
    {
        var two = Bench.Variables(_bench.Root, _bench.Root);
        _bench.Rule("either way round", two, [Bench.When(Bench.Related(_bench.Joins), 0, 1)], [Bench.Relate(_bench.Joins, 1, 0)]);
        _bench.Rule("joined through", Bench.Variables(_bench.Root, _bench.Root, _bench.Root),
            [Bench.When(Bench.Related(_bench.Joins), 0, 1), Bench.When(Bench.Related(_bench.Covers), 1, 2)], [Bench.Relate(_bench.Joins, 0, 2)]);
        _bench.Rule("joined covers", two, [Bench.When(Bench.Related(_bench.Joins), 0, 1)], [Bench.Relate(_bench.Covers, 0, 1)]);
        _bench.Rule("asked for", Bench.Variables(_bench.Root), [Bench.When(new(PredicateSort.Job, "renew"), 0)], [_bench.Need(0, "off")]);
        _bench.Rule("once begun", Bench.Variables(null, _bench.Root), [Bench.When(new(PredicateSort.On), 0, 1)], [Bench.Do(remove, 1)]);
    }

    private void AddRule(Dice dice, string name)
    {
        var variables = Bench.Variables([.. Enumerable.Range(0, dice.Throw(3) + 1).Select(_ => dice.Throw(3) switch
        {
            0 => null,
            1 => _bench.Root,
            _ => dice.Pick<Kind>([_bench.Box, _bench.Lid, _bench.Crate]),
        })]);
        var steps = variables.Where(variable => variable.Sort == Sort.Step).Select(variable => variable.Slot).ToList();
        var parts = variables.Where(variable => variable.Sort == Sort.Part).Select(variable => variable.Slot).ToList();
        var patterns = Enumerable.Range(0, dice.Throw(4)).Select(_ => PatternOver(dice, steps, parts)).ToArray();
        var atStart = parts.Count > 0 && dice.Throw(4) == 3
            ? new[] { new StateCondition(dice.Pick(parts), _bench.Place, _bench.In(dice.Pick(_bench.Place.States))) }
            : [];
        var conclusions = Enumerable.Range(0, dice.Throw(2) + 1).Select(_ => ConclusionOver(dice, parts, 2)).ToArray();
        _bench.Rule(name, variables, patterns, conclusions, atStart);
    }

    private Pattern PatternOver(Dice dice, List<int> steps, List<int> parts)
    {
        if (steps.Count > 0 && (parts.Count == 0 || dice.Throw(2) == 0))
        {
            Predicate[] alone =
            [
                new(PredicateSort.Step), new(PredicateSort.Does, dice.Pick(_bench.Operations).Name), new(PredicateSort.Place, "bay"),
                new(PredicateSort.Energy, "load"), new(PredicateSort.Phase, "back"),
            ];
            if (parts.Count == 0) return Bench.When(dice.Pick(alone), dice.Pick(steps));
            Predicate[] both =
            [
                new(PredicateSort.On), new(PredicateSort.Touches), new(PredicateSort.Moves),
                Bench.Leaves(_bench.Place, dice.Pick(_bench.Place.States)), Bench.Reaches(_bench.Place, dice.Pick(_bench.Place.States)),
            ];
            return dice.Throw(3) == 0
                ? Bench.When(dice.Pick(alone), dice.Pick(steps))
                : Bench.When(dice.Pick(both), dice.Pick(steps), dice.Pick(parts));
        }
        return dice.Throw(2) == 0
            ? Bench.When(dice.Pick(OnPart(_bench)), dice.Pick(parts))
            : Bench.When(Bench.Related(dice.Pick<Relation>([_bench.Covers, _bench.Joins])), dice.Pick(parts), dice.Pick(parts));
    }

    private Conclusion ConclusionOver(Dice dice, List<int> parts, int depth)
    {
        if (parts.Count == 0) return Bench.Stop();
        return dice.Throw(depth > 0 ? 5 : 4) switch
        {
            0 => Bench.Stop(),
            1 => _bench.Need(dice.Pick(parts), dice.Pick(_bench.Place.States)),
            2 => Bench.Do(dice.Pick(_bench.Operations), dice.Pick(parts)),
            3 => Bench.Relate(dice.Throw(2) == 0 ? _bench.Covers : _bench.Joins, dice.Pick(parts), dice.Pick(parts)),
            _ => Bench.OneOf([ConclusionOver(dice, parts, depth - 1)], [ConclusionOver(dice, parts, depth - 1)]),
        };
    }
}
