using ProcedureRules.Beliefs;
using ProcedureRules.Explaining;
using ProcedureRules.Facts;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Finds which change of the packs stands behind what differs between two plans of one case.</summary>
internal sealed class CauseFinder(ChangeIndex changes, PlanDifference difference)
{
    private IReadOnlyList<PackChange>? _atWork;

    /// <summary>The cause of an entry that comes into the plan after or goes from the plan before.</summary>
    public (IReadOnlyList<PackChange> Changes, bool IsTraced) Of(PlanEntry entry, bool comesIn)
    {
        var (own, other) = comesIn ? (difference.After, difference.Before) : (difference.Before, difference.After);
        var tree = Why.Of(own, entry).Tree;
        return Nearest([tree], own) is { } found ? ([found], true) : Elsewhere(tree, own, other) is { } read ? ([read], true) : (AtWork(), false);
    }

    /// <summary>The cause of a step's other turn: what orders it against its new and its old neighbours.</summary>
    public (IReadOnlyList<PackChange> Changes, bool IsTraced) Of(MovedStep moved)
    {
        foreach (var (plan, other) in new[] { (difference.After, difference.Before), (difference.Before, difference.After) })
        {
            var (binding, known) = (Bonds(plan, moved.Step.Id), Bonds(other, moved.Step.Id).ToHashSet());
            foreach (var (first, second) in binding.Where(bond => !known.Contains(bond)))
            {
                var steps = plan.Steps.ToDictionary(step => step.Id);
                if (Nearest([Why.Of(plan, PlanContents.Order(steps[first], steps[second])).Tree], plan) is { } found) return ([found], true);
            }
        }

        return (AtWork(), false);
    }

    /// <summary>The cause of a step that is told or timed otherwise: its operation, or what it rests on.</summary>
    public (IReadOnlyList<PackChange> Changes, bool IsTraced) Of(ChangedStep changed)
    {
        if (changes.OfOperation(changed.After.Step.Operation.Name) is { } own) return ([own], true);
        foreach (var (step, plan) in new[] { (changed.After, difference.After), (changed.Before, difference.Before) })
        {
            var about = plan.Beliefs.Network.RecordsAbout(step.Step).Select(effect => effect.Record.Rule).OfType<Language.CompiledRule>();
            if (about.Select(rule => changes.OfRule(rule.Title)).FirstOrDefault(change => change is not null) is { } rule) return ([rule], true);
        }

        return Of(PlanContents.Step(changed.After), comesIn: true);
    }

    private static IEnumerable<(string First, string Second)> Bonds(Plan plan, string step) =>
        plan.Steps.SelectMany(later => later.After.Select(earlier => (earlier, later.Id))).Where(bond => bond.earlier == step || bond.Id == step);

    // Rules, and names that are new or gone, stand behind what rests on them; an operation or fact that is only worded otherwise seldom does.
    private PackChange? Nearest(IReadOnlyList<WhyNode> roots, Plan plan)
    {
        PackChange? weaker = null;
        foreach (var node in Breadth(roots))
        {
            if (node.Rule is { } rule && changes.OfRule(rule) is { } strong) return strong;
            if (node.Id is not { } id || changes.OfId(id, plan.Situation) is not { } named) continue;
            if (named.Kind is PackChangeKind.Added or PackChangeKind.Removed) return named;
            weaker ??= named;
        }

        return weaker;
    }

    // What goes since a fact is worked out otherwise now rests on the new rule in the other plan only.
    private PackChange? Elsewhere(WhyNode tree, Plan own, Plan other)
    {
        foreach (var id in Breadth([tree]).Where(node => node.Sort is WhyNodeSort.Fact or WhyNodeSort.Condition).Select(node => node.Id).OfType<string>().Distinct())
        {
            if (Key(other, id) is { } there && Nearest([Why.Of(other, PlanContents.Figure(there)).Tree], other) is { } found) return found;
            if (IsAssumed(own, id) != IsAssumed(other, id) || IsAssumed(own, id)) if (changes.Archetypes.FirstOrDefault(sheet => sheet.Keys.Contains("facts")) is { } sheet) return sheet;
        }

        return null;
    }

    // Rules that say anything in either plan, and operations that it has.
    private IReadOnlyList<PackChange> AtWork() => _atWork ??=
    [
        .. new[] { difference.Before, difference.After }.SelectMany(plan => plan.Beliefs.Network.Records
            .Where(record => record.Rule is not null && Enumerable.Range(0, record.Effects.Count).Any(effect => plan.Beliefs.Available(record, effect) > Assurance.No))
            .Select(record => changes.OfRule(record.Rule!.Title))
            .Concat(plan.Steps.Select(step => changes.OfOperation(step.Step.Operation.Name)))).OfType<PackChange>().Distinct(),
        .. difference.After.Situation.Observations.Any(observation => observation.Source == Source.Assumed) ? changes.Archetypes : [],
    ];

    private static FactKey? Key(Plan plan, string id)
    {
        var dot = id.IndexOf('.', StringComparison.Ordinal);
        return dot > 0 && plan.Situation.Parts.FirstOrDefault(part => part.Name == id[..dot]) is { } part && plan.Situation.Vocabulary.FactOf(part.Kind, id[(dot + 1)..]) is { } fact
            ? new FactKey(part, fact)
            : null;
    }

    private static bool IsAssumed(Plan plan, string id) => plan.Situation.Observations.Any(observation => observation.Source == Source.Assumed && observation.Fact.ToString() == id);

    private static IEnumerable<WhyNode> Breadth(IReadOnlyList<WhyNode> roots)
    {
        for (var level = roots; level.Count > 0; level = [.. level.SelectMany(node => node.Because)])
            foreach (var node in level) yield return node;
    }
}
