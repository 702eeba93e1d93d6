namespace ProcedureRules.Testing.Approving;

/// <summary>A case that was run to be approved.</summary>
/// <param name="Result">What it came to; of a case that is meant, whatever was approved before.</param>
/// <param name="Plans">Its plans turn by turn, by their names.</param>
internal sealed record ApprovedRun(CaseResult Result, IReadOnlyList<(string Name, IReadOnlyList<OutlineBlock> Outline)> Plans)
{
    /// <summary>Runs cases on all cores; the runs stand in the order of the cases.</summary>
    public static IReadOnlyList<ApprovedRun> Of(IReadOnlyList<ScenarioCase> cases, Func<ScenarioCase, bool> isMeant, CancellationToken cancellation)
    {
        var runs = new ApprovedRun[cases.Count];
        Parallel.For(0, cases.Count, Workers.Options(cancellation), i =>
        {
            var (plans, of) = (new List<(string, IReadOnlyList<OutlineBlock>)>(), cases[i]);
            var result = (isMeant(of) ? of.HeldTo(new Dictionary<int, ApprovedSection>()) : of).Run(
                stage =>
                {
                    if (stage.Turn is { } turn && (isMeant(of) || stage.Approved is not null)) plans.Add((ApprovedSection.NameOf(of, turn), [.. PlanOutline.Of(stage.Outcome.Plan)]));
                },
                cancellation);
            runs[i] = new ApprovedRun(result, plans);
        });
        return runs;
    }
}
