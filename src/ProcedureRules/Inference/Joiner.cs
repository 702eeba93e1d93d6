using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>
/// Finds the instances that a new ground fact completes: it joins only through that fact, so nothing is ever found twice and nothing old is
/// gone through again.
/// </summary>
internal sealed class Joiner(RuleIndex index, GroundStore store, Action<RuleInstance> found)
{
    private readonly object[] _slots = new object[index.Plans.Select(plan => plan.Rule.Variables.Count).DefaultIfEmpty().Max()];
    private readonly Ground[] _grounds = new Ground[index.Plans.Select(plan => plan.Patterns.Length).DefaultIfEmpty().Max()];
    private Ground _seed = null!;

    /// <summary>Called for every ground fact that is looked at; throws where the search has to stop.</summary>
    public required Action Breathe { get; init; }

    /// <summary>Joins a ground fact that the store already has.</summary>
    public void JoinThrough(Ground seed)
    {
        _seed = seed;
        foreach (var reader in index.ReadersOf(seed.Predicate))
            Try(reader, -1, reader.Pattern, seed);
    }

    private void Extend(Reader reader, int done)
    {
        if (done == reader.Steps.Length)
        {
            var plan = reader.Plan;
            found(new RuleInstance(plan, new Binding(_slots[..plan.Rule.Variables.Count]), _grounds[..plan.Patterns.Length]));
            return;
        }
        var step = reader.Steps[done];
        var pattern = reader.Plan.Patterns[step.Pattern];
        switch (step.Access)
        {
            case JoinAccess.Exact:
                var exact = store.Exactly(pattern.Predicate, _slots[pattern.First], pattern.Second < 0 ? null : _slots[pattern.Second]);
                if (exact is not null) Try(reader, done, step.Pattern, exact);
                break;
            case JoinAccess.ByFirst:
                foreach (var ground in store.ByFirst(pattern.Predicate, _slots[pattern.First])) Try(reader, done, step.Pattern, ground);
                break;
            case JoinAccess.BySecond:
                foreach (var ground in store.BySecond(pattern.Predicate, _slots[pattern.Second])) Try(reader, done, step.Pattern, ground);
                break;
            default:
                foreach (var ground in store.All(pattern.Predicate)) Try(reader, done, step.Pattern, ground);
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
