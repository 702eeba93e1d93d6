using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>
/// Finds the instances that a new ground fact completes: it joins only through that fact, so nothing is ever found twice and nothing old is
/// gone through again.
/// </summary>
internal sealed class Joiner
{
    private readonly RuleIndex _index;
    private readonly GroundStore _store;
    private readonly Action<RuleInstance> _found;
    private readonly Action<Reader> _begin;
    private readonly object[] _slots;
    private readonly Ground[] _grounds;
    private Ground _seed = null!;

    public Joiner(RuleIndex index, GroundStore store, Action<RuleInstance> found)
    {
        (_index, _store, _found) = (index, store, found);
        _begin = reader => Try(reader, -1, reader.Pattern, _seed);
        _slots = new object[index.MostVariables];
        _grounds = new Ground[index.MostPatterns];
    }

    /// <summary>Called for every ground fact that is looked at; throws where the search has to stop.</summary>
    public required Action Breathe { get; init; }

    /// <summary>Joins a ground fact that the store already has.</summary>
    public void JoinThrough(Ground seed)
    {
        _seed = seed;
        _index.ReadersOf(seed.Predicate).ForEach(seed, _begin);
    }

    private void Extend(Reader reader, int done)
    {
        if (done == reader.Steps.Length)
        {
            var plan = reader.Plan;
            _found(new RuleInstance(plan, new Binding(_slots[..plan.Rule.Variables.Count]), _grounds[..plan.Patterns.Length]));
            return;
        }
        var step = reader.Steps[done];
        var pattern = reader.Plan.Patterns[step.Pattern];
        switch (step.Access)
        {
            case JoinAccess.Exact:
                var exact = _store.Exactly(pattern.Predicate, _slots[pattern.First], pattern.Second < 0 ? null : _slots[pattern.Second]);
                if (exact is not null) Try(reader, done, step.Pattern, exact);
                break;
            case JoinAccess.ByFirst:
                foreach (var ground in _store.ByFirst(pattern.Predicate, _slots[pattern.First])) Try(reader, done, step.Pattern, ground);
                break;
            case JoinAccess.BySecond:
                foreach (var ground in _store.BySecond(pattern.Predicate, _slots[pattern.Second])) Try(reader, done, step.Pattern, ground);
                break;
            default:
                foreach (var ground in _store.All(pattern.Predicate)) Try(reader, done, step.Pattern, ground);
                break;
        }
    }

    private void Try(Reader reader, int done, int at, Ground ground)
    {
        Breathe();
        // Where the new fact meets several conditions of a rule, it comes in through the first of them.
        if (at < reader.Pattern && ReferenceEquals(ground, _seed)) return;
        var pattern = reader.Plan.Patterns[at];
        if (pattern.First >= 0 && pattern.First == pattern.Second && !ReferenceEquals(ground.First, ground.Second)) return;
        if (pattern.First >= 0) _slots[pattern.First] = ground.First!;
        if (pattern.Second >= 0) _slots[pattern.Second] = ground.Second!;
        _grounds[at] = ground;
        Extend(reader, done + 1);
    }
}
