using System.Collections.Concurrent;
using ProcedureRules.Testing.Mutating;

namespace ProcedureRules.Testing;

/// <summary>What scenarios notice of changes in rules.</summary>
/// <param name="Mutants">Every mutant that was run, by file and place.</param>
/// <param name="Failing">Cases that fail with the packs as they are; where there are any, no mutant was run.</param>
public sealed record MutationReport(IReadOnlyList<MutantResult> Mutants, IReadOnlyList<CaseResult> Failing)
{
    /// <summary>How many were noticed.</summary>
    public int Killed => Mutants.Count(mutant => mutant.Outcome == MutantOutcome.Killed);

    /// <summary>The share that was noticed, per cent; 100 of nothing.</summary>
    public double Score => Mutants.Count == 0 ? 100 : 100.0 * Killed / Mutants.Count;

    /// <summary>Changes one thing after the other in the rules of packs and runs the cases that can notice.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="cases">The cases, which all pass.</param>
    /// <param name="options">Which mutants are run, and how.</param>
    /// <param name="cancellation">Ends the run early; what is found by then stands in the result file.</param>
    /// <exception cref="IOException">The result file cannot be read or written.</exception>
    /// <exception cref="UnauthorizedAccessException">The result file cannot be read or written.</exception>
    public static MutationReport Of(ProcedureEngine engine, IReadOnlyList<ScenarioCase> cases, MutationOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(cases);
        ArgumentNullException.ThrowIfNull(options);
        var stages = Stages.Of(cases, cancellation);
        if (stages.Failed.Count > 0) return new MutationReport([], stages.Failed);
        var mutants = Chosen(MutantList.Of(engine), options);
        using var file = options.ResultFile is { } path ? new ResultFile(path, Mutating.ResultFile.MarkOf(engine, cases)) : null;
        var (results, done) = (new MutantResult[mutants.Count], 0);
        // The mutants of a rule share what is known of it, in an order that does not hang on threads.
        var rules = Enumerable.Range(0, mutants.Count).GroupBy(i => (mutants[i].Pack, mutants[i].Rule)).Select(rule => rule.ToList()).ToList();
        Parallel.ForEach(Partitioner.Create(rules, EnumerablePartitionerOptions.NoBuffering), Workers.Options(cancellation), rule =>
        {
            var (pack, name) = (mutants[rule[0]].Pack, mutants[rule[0]].Rule);
            var trial = new RuleTrial(engine.Rules, stages.With(pack, name), stages.Without, options.IsThorough, cancellation);
            foreach (var i in rule)
            {
                var mutant = mutants[i];
                var known = file?.Find(mutant.Id);
                results[i] = trial.WithGround(mutant, known is var (outcome, by) ? mutant.Result(outcome, by) : trial.Try(mutant));
                if (known is null) file?.Add(results[i]);
                else if (known.Value.By is { } noticed) trial.Prefer(noticed);
                options.Progress?.Invoke(Interlocked.Increment(ref done), mutants.Count);
            }
        });
        return new MutationReport([.. results.OrderBy(result => result.Span.File?.Path, StringComparer.Ordinal).ThenBy(result => result.Span.Offset).ThenBy(result => result.Id, StringComparer.Ordinal)], []);
    }

    private static List<Mutant> Chosen(IReadOnlyList<Mutant> mutants, MutationOptions options)
    {
        var meant = mutants.Where(mutant => options.Filter is not { } words
            || mutant.Rule.Contains(words, StringComparison.OrdinalIgnoreCase) || mutant.Pack.Contains(words, StringComparison.OrdinalIgnoreCase)).ToArray();
        new Random(options.Seed).Shuffle(meant);
        return [.. meant.Take(options.Limit ?? meant.Length)];
    }
}
