using ProcedureRules.Testing.Covering;

namespace ProcedureRules.Testing;

/// <summary>What scenarios reach of the rules of packs.</summary>
/// <param name="Rules">Every authored rule and row of a table, in the order of the packs.</param>
/// <param name="Operations">Every operation, in the order of the packs.</param>
/// <param name="Facts">Every fact, in the order of the packs.</param>
/// <param name="Jobs">Every job, in the order of the packs.</param>
/// <param name="Cases">How many cases were run.</param>
public sealed record CoverageReport(
    IReadOnlyList<RuleCoverage> Rules, IReadOnlyList<OperationCoverage> Operations, IReadOnlyList<FactCoverage> Facts, IReadOnlyList<JobCoverage> Jobs, int Cases)
{
    /// <summary>How many rules fired in some case.</summary>
    public int Fired => Rules.Count(rule => rule.Fired > 0);

    /// <summary>How many conditions that test there are.</summary>
    public int Conditions => Rules.Sum(rule => rule.Conditions.Count);

    /// <summary>How many of them were seen both to hold and not to.</summary>
    public int Settled => Rules.Sum(rule => rule.Conditions.Count(condition => condition.IsSettledBothWays));

    /// <summary>How many conclusions there are.</summary>
    public int Conclusions => Rules.Sum(rule => rule.Conclusions.Count);

    /// <summary>How many of them were used.</summary>
    public int Used => Rules.Sum(rule => rule.Conclusions.Count(conclusion => conclusion.Used > 0));

    /// <summary>Runs cases and notes what of the rules they reach.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="cases">The cases.</param>
    /// <param name="cancellation">Ends the run early.</param>
    public static CoverageReport Of(ProcedureEngine engine, IReadOnlyList<ScenarioCase> cases, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(cases);
        var ledger = new CoverageLedger(engine.Rules);
        Parallel.ForEach(cases, Workers.Options(cancellation), one =>
        {
            var sheet = new CoverageSheet();
            one.Run(stage => sheet.Note(stage.Outcome.Plan), cancellation);
            ledger.Add(sheet);
        });
        return ledger.Report(cases.Count);
    }
}
