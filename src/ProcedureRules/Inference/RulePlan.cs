using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>A rule ready to match: its conditions that bind, with one for every variable that has none of its own.</summary>
internal sealed class RulePlan
{
    private readonly PredicateSort[] _sorts;

    public RulePlan(CompiledRule rule, int ordinal, Func<Predicate, int> numberOf)
    {
        Rule = rule;
        Ordinal = ordinal;
        var patterns = Complete(rule).ToList();
        _sorts = [.. patterns.Select(pattern => pattern.Predicate.Sort)];
        Patterns = [.. patterns.Select(pattern => new PatternPlan(numberOf(pattern.Predicate), pattern.First, pattern.Second))];
    }

    public CompiledRule Rule { get; }

    /// <summary>The rule's index in its rule base.</summary>
    public int Ordinal { get; }

    public PatternPlan[] Patterns { get; }

    /// <summary>The order of the other conditions once one is met: what is bound most comes next, and of these what is likely rarest.</summary>
    public JoinStep[] StepsFrom(int seed)
    {
        var bound = new bool[Rule.Variables.Count];
        var open = Enumerable.Range(0, Patterns.Length).Where(pattern => pattern != seed).ToList();
        var steps = new JoinStep[open.Count];
        Bind(seed);
        for (var i = 0; i < steps.Length; i++)
        {
            var next = open.MinBy(pattern => ((int)AccessOf(pattern), Commonness(_sorts[pattern])));
            steps[i] = new JoinStep(next, AccessOf(next));
            open.Remove(next);
            Bind(next);
        }
        return steps;

        bool IsBound(int slot) => slot >= 0 && bound[slot];

        void Bind(int pattern)
        {
            if (Patterns[pattern].First >= 0) bound[Patterns[pattern].First] = true;
            if (Patterns[pattern].Second >= 0) bound[Patterns[pattern].Second] = true;
        }

        JoinAccess AccessOf(int pattern) => (IsBound(Patterns[pattern].First), IsBound(Patterns[pattern].Second)) switch
        {
            (true, true) => JoinAccess.Exact,
            (true, false) => Patterns[pattern].Second < 0 ? JoinAccess.Exact : JoinAccess.ByFirst,
            (false, true) => JoinAccess.BySecond,
            _ => JoinAccess.All,
        };
    }

    /// <summary>
    /// A part must be on the vehicle and of its variable's kind, whatever else binds it; a rule without conditions is matched once.
    /// </summary>
    private static IEnumerable<Pattern> Complete(CompiledRule rule)
    {
        var hasAny = false;
        foreach (var pattern in rule.Patterns)
        {
            hasAny = true;
            yield return pattern;
        }
        foreach (var variable in rule.Variables)
        {
            var predicate = variable.Sort == Sort.Step
                ? new Predicate(PredicateSort.Step)
                : new Predicate(PredicateSort.Part, variable.Kind!.Name);
            var isNeeded = variable.Sort == Sort.Step
                ? !rule.Patterns.Any(pattern => pattern.First == variable.Slot || pattern.Second == variable.Slot)
                : !rule.Patterns.Any(pattern => pattern.Predicate == predicate && pattern.First == variable.Slot);
            if (!isNeeded) continue;
            hasAny = true;
            yield return new Pattern(predicate, variable.Slot, -1, variable.Name);
        }
        if (!hasAny) yield return new Pattern(RuleIndex.Always, -1, -1, "");
    }

    private static int Commonness(PredicateSort sort) => sort switch
    {
        PredicateSort.Job => 0,
        PredicateSort.Does => 1,
        PredicateSort.Related => 2,
        PredicateSort.Part => 4,
        PredicateSort.Step => 5,
        _ => 3,
    };
}
