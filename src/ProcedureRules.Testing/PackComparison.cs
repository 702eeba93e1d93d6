using ProcedureRules.Diagnostics;
using ProcedureRules.Explaining;
using ProcedureRules.Testing.Comparing;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Testing;

/// <summary>What differs between two versions of packs, in what they declare and in the plans they make of the same vehicles.</summary>
public sealed record PackComparison
{
    private const string Scenarios = "scenarios";

    /// <summary>What the packs declare otherwise.</summary>
    public required IReadOnlyList<PackChange> Changes { get; init; }

    /// <summary>Whether the version of each pack was stepped enough.</summary>
    public required IReadOnlyList<VersionStep> Versions { get; init; }

    /// <summary>What changes in plans, by cause.</summary>
    public required IReadOnlyList<ChangeCause> Causes { get; init; }

    /// <summary>The plans that change.</summary>
    public required IReadOnlyList<ComparedPlan> Plans { get; init; }

    /// <summary>How many plans were compared: one for each turn of each case.</summary>
    public required int Compared { get; init; }

    /// <summary>The cases that only the packs before can read, with why.</summary>
    public required IReadOnlyList<(string Name, Diagnostic Why)> OnlyBefore { get; init; }

    /// <summary>The cases that speak of what only the packs after know.</summary>
    public required IReadOnlyList<string> OnlyAfter { get; init; }

    /// <summary>The changes that no plan shows: no scenario proves them.</summary>
    public IEnumerable<PackChange> Unseen => Changes.Except(Causes.Where(cause => cause.IsTraced || cause.Changes.Count == 1).SelectMany(cause => cause.Changes));

    /// <summary>Whether every version was stepped enough.</summary>
    public bool IsStepEnough => Versions.All(version => version.IsEnough);

    /// <summary>Compares two versions over the scenarios beside either of them.</summary>
    /// <param name="before">The packs before.</param>
    /// <param name="folderBefore">The folder they were read from.</param>
    /// <param name="after">The packs after.</param>
    /// <param name="folderAfter">The folder they were read from.</param>
    /// <param name="options">On what they are compared besides.</param>
    /// <param name="cancellation">Ends the comparison early.</param>
    public static PackComparison Of(
        ProcedureEngine before, string folderBefore, ProcedureEngine after, string folderAfter, ComparisonOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(folderBefore);
        ArgumentNullException.ThrowIfNull(folderAfter);
        return Of(before, [.. Files(folderBefore)], after, [.. Files(folderAfter)], options, cancellation);
    }

    /// <summary>Compares two versions over scenarios that a program holds.</summary>
    /// <param name="before">The packs before.</param>
    /// <param name="scenariosBefore">Scenarios of them.</param>
    /// <param name="after">The packs after.</param>
    /// <param name="scenariosAfter">Scenarios of them; one of the same name stands in for one before.</param>
    /// <param name="options">On what they are compared besides.</param>
    /// <param name="cancellation">Ends the comparison early.</param>
    public static PackComparison Of(
        ProcedureEngine before, IReadOnlyList<SourceFile> scenariosBefore, ProcedureEngine after, IReadOnlyList<SourceFile> scenariosAfter,
        ComparisonOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        options ??= new ComparisonOptions();
        var changes = PackChanges.Between(before.Written, after.Written);
        var pairs = new CasePairs(before, after);
        pairs.AddScenarios(scenariosBefore, scenariosAfter);
        pairs.AddGenerated(options.Generated, options.Seed);
        var (plans, compared) = (new IReadOnlyList<ComparedPlan>[pairs.Both.Count], 0);
        Parallel.For(0, plans.Length, Workers.Options(cancellation), i =>
        {
            var (old, now) = (TurnPlan.Of(before, pairs.Both[i].Before, cancellation), TurnPlan.Of(after, pairs.Both[i].After, cancellation));
            Interlocked.Add(ref compared, Math.Max(old.Count, now.Count));
            plans[i] = [.. Turns(pairs.Both[i].After.Name, old, now)];
        });
        var ledger = new EffectLedger(new ChangeIndex(changes), options.Units);
        foreach (var plan in plans.SelectMany(plan => plan))
            if (plan.Difference is { } difference) ledger.Add(plan.Name, difference);
        return new PackComparison
        {
            Changes = changes,
            Versions = [.. Stepped(before, after, changes)],
            Causes = ledger.Causes(),
            Plans = [.. plans.SelectMany(plan => plan)],
            Compared = compared,
            OnlyBefore = pairs.OnlyBefore,
            OnlyAfter = pairs.OnlyAfter,
        };
    }

    // At a later turn only what the turns before it have not told.
    private static IEnumerable<ComparedPlan> Turns(string name, IReadOnlyList<TurnPlan> before, IReadOnlyList<TurnPlan> after)
    {
        var told = new HashSet<string>();
        for (var turn = 0; turn < Math.Max(before.Count, after.Count); turn++)
        {
            var (old, now) = (before.ElementAtOrDefault(turn), after.ElementAtOrDefault(turn));
            var called = turn == 0 ? name : $"{name}, turn {turn}";
            if (old?.Plan is { } was && now?.Plan is { } becomes)
            {
                var difference = PlanDifference.Between(was, becomes);
                if (!difference.IsNothing && told.Add(Summary(difference))) yield return new ComparedPlan(called, difference, null);
            }
            else if (old?.Plan is not null || now?.Plan is not null)
            {
                yield return new ComparedPlan(called, null, now?.Plan is null ? $"no plan any more: {now?.Trouble}" : $"a plan, where there was none: {old?.Trouble}");
            }
        }
    }

    private static string Summary(PlanDifference difference) => string.Join('\n',
    [
        .. difference.StepsIn.Select(step => $"+{step.Id}"), .. difference.StepsOut.Select(step => $"-{step.Id}"),
        .. difference.StepsMoved.Select(moved => $">{moved.Step.Id}"), .. difference.StepsChanged.Select(changed => $"~{changed.After.Id}"),
        .. difference.In.Select(entry => $"+{entry.Text}"), .. difference.Out.Select(entry => $"-{entry.Text}"),
    ]);

    private static IEnumerable<VersionStep> Stepped(ProcedureEngine before, ProcedureEngine after, IReadOnlyList<PackChange> changes)
    {
        var olds = before.Packs.ToDictionary(pack => pack.Name, pack => pack.Version);
        var news = after.Packs.ToDictionary(pack => pack.Name, pack => pack.Version);
        foreach (var pack in olds.Keys.Union(news.Keys))
        {
            var due = changes.Where(change => change.Pack == pack).Select(change => (VersionPart?)change.Due).Max();
            yield return VersionStep.Of(pack, olds.GetValueOrDefault(pack), news.GetValueOrDefault(pack), due);
        }
    }

    private static IEnumerable<SourceFile> Files(string folder) => ScenarioFiles.Under(Path.Combine(folder, Scenarios), new DiagnosticBag());
}
