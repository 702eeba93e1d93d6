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
        var (old, now) = (before.Steps.ToDictionary(step => step.Id), after.Steps.ToDictionary(step => step.Id));
        var (said, says) = (PlanContents.Beside(before).ToList(), PlanContents.Beside(after).ToList());
        var (saidKeys, saysKeys) = (said.Select(entry => entry.Key).ToHashSet(), says.Select(entry => entry.Key).ToHashSet());
        var kept = CommonOrder.Of([.. before.Steps.Select(step => step.Id)], [.. after.Steps.Select(step => step.Id)]);
        return new PlanDifference
        {
            Before = before,
            After = after,
            StepsIn = [.. after.Steps.Where(step => !old.ContainsKey(step.Id))],
            StepsOut = [.. before.Steps.Where(step => !now.ContainsKey(step.Id))],
            StepsMoved = [.. after.Steps.Where(step => old.ContainsKey(step.Id) && !kept.Contains(step.Id)).Select(step => new MovedStep(step, old[step.Id].Number))],
            StepsChanged = [.. after.Steps.Where(step => old.TryGetValue(step.Id, out var other) && ChangedStep.IsChanged(other, step)).Select(step => new ChangedStep(old[step.Id], step))],
            In = [.. says.Where(entry => !saidKeys.Contains(entry.Key)).DistinctBy(entry => entry.Key)],
            Out = [.. said.Where(entry => !saysKeys.Contains(entry.Key)).DistinctBy(entry => entry.Key)],
        };
    }
}
