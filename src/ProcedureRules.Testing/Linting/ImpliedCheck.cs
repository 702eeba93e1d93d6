using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds conditions on a step that follow from another condition of the same rule: they say nothing, and nobody can test them.</summary>
internal static class ImpliedCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject) =>
        (from rule in subject.Authored
         from pattern in rule.Patterns
         where pattern.Span.File is not null
         let ground = rule.Patterns.FirstOrDefault(other => other.Span.File is not null && Implies(subject.Vocabulary, other, pattern))
         where ground is not null
         select (rule, pattern, ground))
        .DistinctBy(found => found.pattern.Span)
        .Select(found => new LintFinding(found.rule.Span, Messages.Implied(found.pattern.Span, found.pattern.Text, found.ground.Text)));

    // A step changes the part that it works on, and touches it; what an operation does is said where it is declared.
    private static bool Implies(Vocabulary vocabulary, Pattern ground, Pattern pattern)
    {
        if (ground.First != pattern.First) return false;
        var isSamePart = ground.Second == pattern.Second;
        return pattern.Predicate.Sort switch
        {
            PredicateSort.On => isSamePart && ground.Predicate.Sort is (PredicateSort.Leaves or PredicateSort.Reaches),
            PredicateSort.Touches => isSamePart && ground.Predicate.Sort is (PredicateSort.On or PredicateSort.Leaves or PredicateSort.Reaches),
            PredicateSort.Place or PredicateSort.Energy or PredicateSort.Phase => ground.Predicate.Sort == PredicateSort.Does
                && vocabulary.Operations.TryGetValue(ground.Predicate.Name, out var operation) && Has(operation, pattern.Predicate),
            _ => false,
        };
    }

    private static bool Has(Operation operation, Predicate predicate) => predicate.Sort switch
    {
        PredicateSort.Place => operation.Place == predicate.Name,
        PredicateSort.Energy => operation.Energies.Contains(predicate.Name),
        _ => string.Equals(operation.Phase.ToString(), predicate.Name, StringComparison.OrdinalIgnoreCase),
    };
}
