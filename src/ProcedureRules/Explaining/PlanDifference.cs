using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>What a plan has that another has not: steps, what goes with them, what is asked, and the labour.</summary>
public sealed record PlanDifference
{
    /// <summary>The plan before.</summary>
    public required Plan Before { get; init; }

    /// <summary>The plan after.</summary>
    public required Plan After { get; init; }

    /// <summary>Steps that come in, as the plan after has them.</summary>
    public required IReadOnlyList<PlanStep> StepsIn { get; init; }

    /// <summary>Steps that go, as the plan before had them.</summary>
    public required IReadOnlyList<PlanStep> StepsOut { get; init; }

    /// <summary>Steps that are in both and change their turn among these, as few as tell the whole change.</summary>
    public required IReadOnlyList<MovedStep> StepsMoved { get; init; }

    /// <summary>Steps that are in both and are told or timed otherwise, or stand behind a check in only one of them.</summary>
    public required IReadOnlyList<ChangedStep> StepsChanged { get; init; }

    /// <summary>Cautions, stops, checks, choices, questions, tools and the like that come in.</summary>
    public required IReadOnlyList<PlanEntry> In { get; init; }

    /// <summary>Cautions, stops, checks, choices, questions, tools and the like that go.</summary>
    public required IReadOnlyList<PlanEntry> Out { get; init; }

    /// <summary>Whether the two plans say the same.</summary>
    public bool IsNothing => StepsIn.Count + StepsOut.Count + StepsMoved.Count + StepsChanged.Count + In.Count + Out.Count == 0 && Before.Labour == After.Labour;

    /// <summary>Compares two plans.</summary>
    public static PlanDifference Between(Plan before, Plan after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var (was, now) = (PlanListing.Of(before), PlanListing.Of(after));
        var kept = CommonOrder.Of([.. before.Steps.Select(step => step.Id)], [.. after.Steps.Select(step => step.Id)]);
        return new PlanDifference
        {
            Before = before,
            After = after,
            StepsIn = [.. after.Steps.Where(step => !was.Steps.ContainsKey(step.Id))],
            StepsOut = [.. before.Steps.Where(step => !now.Steps.ContainsKey(step.Id))],
            StepsMoved = [.. after.Steps.Where(step => was.Steps.ContainsKey(step.Id) && !kept.Contains(step.Id)).Select(step => new MovedStep(step, was.Steps[step.Id].Number))],
            StepsChanged = [.. after.Steps.Where(step => was.Steps.TryGetValue(step.Id, out var other) && ChangedStep.IsChanged(other, step))
                .Select(step => new ChangedStep(was.Steps[step.Id], step))],
            In = now.EntriesNotIn(was),
            Out = was.EntriesNotIn(now),
        };
    }
}
