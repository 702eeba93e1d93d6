using ProcedureRules.Diagnostics;
using ProcedureRules.Testing.Approving;

namespace ProcedureRules.Testing;

/// <summary>The plans of cases, printed to be approved. Who reads what changed, and keeps it, approves it.</summary>
/// <param name="Files">The files that change.</param>
/// <param name="Failing">Cases that fail their own expectations, or differ from approved plans that were not meant; where there are any, nothing is printed.</param>
/// <param name="Diagnostics">The mistakes of the scenarios, or names that no case has; where there is an error, nothing is printed. Approved plans that can no longer be read are none: they are printed anew.</param>
public sealed record Approval(IReadOnlyList<ApprovedText> Files, IReadOnlyList<CaseResult> Failing, IReadOnlyList<Diagnostic> Diagnostics)
{
    /// <summary>Prints plans anew.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="rules">The folder of packs.</param>
    /// <param name="scope">The cases whose plans are approved. Of others what is approved is kept.</param>
    /// <param name="cancellation">Ends it early.</param>
    public static Approval Of(ProcedureEngine engine, string rules, ApprovalScope scope, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(scope);
        var set = ScenarioSet.Beside(engine, rules, out var ofApproved);
        var mistakes = set.Diagnostics.Except(ofApproved).ToList();
        // Where a scenario cannot be read, its cases only seem not to be there.
        if (!HasError()) mistakes.AddRange(scope.Mistakes(set.Cases));
        if (HasError()) return new Approval([], [], mistakes);
        var cases = set.Cases.Where(one => scope.Means(one) || one.IsHeld).ToList();
        var runs = ApprovedRun.Of(cases, scope.Means, cancellation);
        if (runs.Where(run => !run.Result.Passed).Select(run => run.Result).ToList() is { Count: > 0 } failing) return new Approval([], failing, mistakes);
        var files = runs.Where(run => run.Plans.Count > 0).GroupBy(run => run.Result.Case.Span.File?.Path ?? "")
            .ToDictionary(file => ApprovedFile.PathFor(file.Key), file => ApprovedFile.Write(file.Key, file.SelectMany(run => run.Plans)), StringComparer.Ordinal);
        var old = ScenarioSet.ApprovedBeside(rules, new DiagnosticBag()).ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal);
        return new Approval(
            [
                .. files.Where(file => old.GetValueOrDefault(file.Key)?.ReplaceLineEndings("\n") != file.Value).Select(file => new ApprovedText(file.Key, file.Value)),
                .. old.Keys.Where(path => !files.ContainsKey(path)).Select(path => new ApprovedText(path, null)),
            ],
            [],
            mistakes);

        bool HasError() => mistakes.Exists(mistake => mistake.Severity == Severity.Error);
    }
}
