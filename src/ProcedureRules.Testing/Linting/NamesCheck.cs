using ProcedureRules.Diagnostics;
using ProcedureRules.Spelling;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds names of one sort that a slip of the pen makes the same, and names that nothing uses.</summary>
internal static class NamesCheck
{
    // Shorter words are near each other by nature.
    private const int Shortest = 5;

    public static IEnumerable<LintFinding> Find(LintSubject subject)
    {
        var words = subject.Vocabulary;
        return Near("kind", words.Kinds.Values.Select(kind => (kind.Name, kind.Span)))
            .Concat(Near("operation", words.Operations.Values.Select(operation => (operation.Name, operation.Span))))
            .Concat(Near("relation", words.Relations.Values.Select(relation => (relation.Name, relation.Span))))
            .Concat(Near("cause", words.Causes.Values.Select(cause => (cause.Name, cause.Span))))
            .Concat(Near("job", words.Jobs.Values.Select(job => (job.Name, job.Span))))
            .Concat(words.Kinds.Values.SelectMany(kind => Near("fact", words.FactsOf(kind).Select(fact => (fact.Name, fact.Span)))).DistinctBy(finding => finding.Of))
            .Concat(UnusedCauses(subject));
    }

    private static IEnumerable<LintFinding> Near(string what, IEnumerable<(string Name, SourceSpan Span)> names)
    {
        var all = names.Where(name => name.Name.Length >= Shortest).ToList();
        for (var i = 1; i < all.Count; i++)
            if (all.Take(i).FirstOrDefault(other => AreNear(other.Name, all[i].Name)) is { Name: { } near } first)
                yield return new LintFinding(all[i].Span, Messages.NearNames(all[i].Span, what, all[i].Name, near, first.Span));
    }

    // Names that are numbered differ on purpose.
    private static bool AreNear(string one, string other) =>
        Math.Abs(one.Length - other.Length) <= 1 && NearestName.Distance(one, other) == 1 && Letters(one) != Letters(other);

    private static string Letters(string name) => string.Concat(name.Where(c => !char.IsAsciiDigit(c)));

    private static IEnumerable<LintFinding> UnusedCauses(LintSubject subject)
    {
        var spokenOf = subject.Conclusions.Select(entry => entry.Conclusion).OfType<Language.Conclusion.Finding>().Select(finding => finding.Cause).ToHashSet();
        return subject.Vocabulary.Causes.Values.Where(cause => !spokenOf.Contains(cause))
            .Select(cause => new LintFinding(cause.Span, Messages.UnusedName(cause.Span, "cause", cause.Name, "no rule speaks for or against it")));
    }
}
