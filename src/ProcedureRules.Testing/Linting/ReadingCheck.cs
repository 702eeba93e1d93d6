using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds what is concluded and never read, what nobody is asked for, and questions that nobody says how to answer.</summary>
internal static class ReadingCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject) => Facts(subject).Concat(Relations(subject));

    private static IEnumerable<LintFinding> Facts(LintSubject subject)
    {
        foreach (var fact in subject.Vocabulary.Facts)
        {
            var isAsked = !fact.IsDerived && !fact.IsDemand;
            if (!subject.IsRead(fact))
                yield return new LintFinding(fact.Span, isAsked ? Messages.NobodyAsks(fact.Span, fact.ToString()) : Messages.NobodyReads(fact.Span, fact.ToString()));
            // What is seen at a glance needs no way to find it; a figure is measured, or looked up.
            if (isAsked && fact is { Type.IsQuantity: true, How: null, FindOperation: null })
                yield return new LintFinding(fact.Span, Messages.NoHow(fact.Span, fact.ToString()));
        }
    }

    private static IEnumerable<LintFinding> Relations(LintSubject subject)
    {
        var concluded = subject.Conclusions.Select(entry => entry.Conclusion).OfType<Conclusion.Relate>().Select(relate => relate.Relation).ToHashSet();
        foreach (var relation in subject.Vocabulary.Relations.Values)
        {
            if (!subject.IsRead(relation))
                yield return new LintFinding(relation.Span, concluded.Contains(relation) ? Messages.NobodyReads(relation.Span, relation.Name) : Messages.UnusedName(relation.Span, "relation", relation.Name, "no rule reads it"));
            else if (relation is { IfSilent: Truth.Unknown, How: null })
                yield return new LintFinding(relation.Span, Messages.NoHow(relation.Span, relation.Name));
        }
    }
}
