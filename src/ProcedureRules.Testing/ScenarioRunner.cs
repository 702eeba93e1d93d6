namespace ProcedureRules.Testing;

/// <summary>Runs cases on all cores.</summary>
public static class ScenarioRunner
{
    /// <summary>Runs cases; the results stand in the order of the cases.</summary>
    /// <param name="cases">The cases.</param>
    /// <param name="cancellation">Ends the run early.</param>
    public static IReadOnlyList<CaseResult> Run(IReadOnlyList<ScenarioCase> cases, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(cases);
        var results = new CaseResult[cases.Count];
        Parallel.For(0, cases.Count, Workers.Options(cancellation), i => results[i] = cases[i].Run(cancellation));
        return results;
    }
}
