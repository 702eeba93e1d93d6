using ProcedureRules.Diagnostics;
using ProcedureRules.Testing.Linting;

namespace ProcedureRules.Testing;

/// <summary>
/// Looks through packs that load for what is likely not meant: rules that can never fire, conclusions that nothing reads, cautions that can
/// be lost. A declaration accepts a finding that is meant under <c>accept</c>, with the reason.
/// </summary>
public static class PackLint
{
    private static readonly Func<LintSubject, IEnumerable<LintFinding>>[] Checks =
        [FiringCheck.Find, ImpliedCheck.Find, RepetitionCheck.Find, ReadingCheck.Find, CautionCheck.Find, OperationCheck.Find, OrderCheck.Find, WhileCheck.Find, NamesCheck.Find];

    /// <summary>The findings that no declaration accepts, and the acceptances of what is not there, by file and place.</summary>
    /// <param name="engine">The packs.</param>
    public static IReadOnlyList<Diagnostic> Of(ProcedureEngine engine)
    {
        ArgumentNullException.ThrowIfNull(engine);
        var subject = new LintSubject(engine);
        var accepted = subject.Written.Accepted.ToLookup(acceptance => (acceptance.Of, acceptance.Code));
        var (bag, met) = (new DiagnosticBag(), new HashSet<(SourceSpan Of, string Code)>());
        foreach (var finding in Checks.SelectMany(check => check(subject)))
        {
            var key = (finding.Of, finding.Says.Code);
            if (accepted.Contains(key)) met.Add(key);
            else bag.Add(finding.Says);
        }

        foreach (var acceptance in subject.Written.Accepted.Where(acceptance => !met.Contains((acceptance.Of, acceptance.Code))))
            bag.Add(Messages.UnneededAccept(acceptance.Span, acceptance.Code));
        return bag.Ordered();
    }
}
