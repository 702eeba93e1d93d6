using ProcedureRules.Diagnostics;

namespace ProcedureRules.Language.Compiling;

/// <summary>Finds conditions on one step that no operation meets together.</summary>
internal sealed class StepPatterns(CompilerContext context, RuleParts rule)
{
    public bool CanMatch()
    {
        var isWhole = true;
        foreach (var step in rule.StepConditions.GroupBy(condition => condition.Pattern.First))
        {
            (Pattern Pattern, SourceSpan Span)[] conditions = [.. step];
            for (var i = 0; i < conditions.Length; i++)
            {
                for (var j = i + 1; j < conditions.Length; j++)
                {
                    if (!Conflict(conditions[i].Pattern, conditions[j].Pattern) && !Conflict(conditions[j].Pattern, conditions[i].Pattern)) continue;
                    context.Bag.Add(Messages.StepNeverIs(conditions[j].Span, conditions[i].Pattern.Text, conditions[j].Pattern.Text, conditions[i].Span));
                    isWhole = false;
                }
            }
        }

        return isWhole;
    }

    private bool Conflict(Pattern one, Pattern other)
    {
        var (sort, name) = (other.Predicate.Sort, other.Predicate.Name);
        if (sort == one.Predicate.Sort && sort is PredicateSort.Does or PredicateSort.Place or PredicateSort.Phase) return name != one.Predicate.Name;
        if (one.Predicate.Sort != PredicateSort.Does) return false;
        var operation = context.Vocabulary.Operations[one.Predicate.Name];
        return sort switch
        {
            PredicateSort.On => rule.Scope.Variables[other.Second].Kind is { } kind && !kind.IsA(operation.On) && !operation.On.IsA(kind),
            PredicateSort.Place => operation.Place != name,
            PredicateSort.Energy => !operation.Energies.Contains(name),
            PredicateSort.Phase => !string.Equals(operation.Phase.ToString(), name, StringComparison.OrdinalIgnoreCase),
            _ => false,
        };
    }
}
