using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Mutating;

/// <summary>The rules to match anew with once a rule may match more than before.</summary>
/// <param name="rules">All rules as they are.</param>
/// <param name="replaced">What takes the place of a rule; it matches wherever the rule does.</param>
internal sealed class Rematch(RuleBase rules, IReadOnlyList<(CompiledRule Old, CompiledRule New)> replaced)
{
    private readonly RuleBase _all = RuleCopies.With(rules, replaced);
    private readonly RuleBase _changed = RuleCopies.Only(rules, [.. replaced.Select(pair => pair.New)]);

    /// <summary>The records of the changed rule where all else is as it was; null where there are more than the bound.</summary>
    public IReadOnlyList<Record>? Matches(StandingAtoms atoms, int budget, CancellationToken cancellation) => RuleMatches.Of(_changed, atoms, budget, cancellation);

    /// <summary>What all rules conclude, the changed one among them.</summary>
    /// <param name="atoms">What they concluded before.</param>
    /// <param name="matches">The records of the changed rule where all else is as it was; null where they are not known.</param>
    /// <param name="budget">The bound on records.</param>
    /// <param name="cancellation">Stops the work.</param>
    public InferenceResult Infer(StandingAtoms atoms, IReadOnlyList<Record>? matches, int budget, CancellationToken cancellation)
    {
        var situation = atoms.Result.Situation;
        // Where nothing new holds, nothing else matches more than before.
        return matches is not null && matches.All(record => record.Effects.All(effect => effect.Atom is null || atoms.Contains(effect.Atom)))
            ? new InferenceResult { Situation = situation, Rules = _all, Records = InPlace(atoms.Result.Records, matches) }
            : new InferenceSession(_all).Infer(situation, budget, cancellation);
    }

    private List<Record> InPlace(IReadOnlyList<Record> before, IReadOnlyList<Record> matches)
    {
        var (index, order) = (RuleIndex.Of(rules), new RecordOrder(RuleIndex.Of(_changed)));
        var records = before.Where(record => record.Mechanism != Mechanism.Rule || !replaced.Any(pair => ReferenceEquals(pair.Old, record.Rule))).ToList();
        foreach (var (old, changed) in replaced)
        {
            var place = records.FindIndex(record => record.Mechanism > Mechanism.Rule || index.OrdinalOf(AsItWas(record.Rule!)) > index.OrdinalOf(old));
            records.InsertRange(place < 0 ? records.Count : place, matches.Where(record => ReferenceEquals(record.Rule, changed)).Order(order));
        }

        return records;
    }

    private CompiledRule AsItWas(CompiledRule rule) => replaced.FirstOrDefault(pair => ReferenceEquals(pair.New, rule)).Old ?? rule;
}
