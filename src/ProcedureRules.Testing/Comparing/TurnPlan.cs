using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Comparing;

/// <summary>What a case came to at one turn.</summary>
/// <param name="Plan">The plan; null where there is none.</param>
/// <param name="Trouble">Why there is none.</param>
internal sealed record TurnPlan(Plan? Plan, string? Trouble)
{
    /// <summary>The plans of a case turn by turn; after a turn that fails there are no more.</summary>
    public static IReadOnlyList<TurnPlan> Of(ProcedureEngine engine, ComparedCase one, CancellationToken cancellation)
    {
        var plans = new List<TurnPlan>();
        var opened = engine.Open(one.Situation);
        if (opened.Session is not { } session) return [new TurnPlan(null, string.Join("; ", opened.Diagnostics.Select(mistake => mistake.Message)))];
        foreach (var turn in one.Turns)
        {
            foreach (var statement in turn.Statements) session.State(statement);
            foreach (var done in turn.Done)
            {
                if (session.Plan(cancellation).Plan is { } now && done.Step.In(now) is [var step, ..]) session.Record(step);
                else return [.. plans, new TurnPlan(null, $"there is no step {done.Step.Name} to be done")];
            }

            var result = session.Plan(cancellation);
            plans.Add(new TurnPlan(result.Plan, result.Plan is null ? string.Join("; ", result.Diagnostics.Select(mistake => mistake.Message)) : null));
        }

        return plans;
    }
}
