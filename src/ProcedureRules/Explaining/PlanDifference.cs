using ProcedureRules.Planning;

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

    /// <summary>Cautions, stops, checks, questions, tools and the like that come in.</summary>
    public required IReadOnlyList<ChangedItem> In { get; init; }

    /// <summary>Cautions, stops, checks, questions, tools and the like that go.</summary>
    public required IReadOnlyList<ChangedItem> Out { get; init; }

    /// <summary>Whether the two plans say the same.</summary>
    public bool IsNothing => StepsIn.Count + StepsOut.Count + StepsMoved.Count + In.Count + Out.Count == 0 && Before.Labour == After.Labour;

    /// <summary>Compares two plans.</summary>
    public static PlanDifference Between(Plan before, Plan after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var (old, now) = (before.Steps.ToDictionary(step => step.Id), after.Steps.ToDictionary(step => step.Id));
        var (said, says) = (ChangedItem.Of(before), ChangedItem.Of(after));
        var kept = CommonOrder.Of([.. before.Steps.Select(step => step.Id)], [.. after.Steps.Select(step => step.Id)]);
        return new PlanDifference
        {
            Before = before,
            After = after,
            StepsIn = [.. after.Steps.Where(step => !old.ContainsKey(step.Id))],
            StepsOut = [.. before.Steps.Where(step => !now.ContainsKey(step.Id))],
            StepsMoved = [.. after.Steps.Where(step => old.ContainsKey(step.Id) && !kept.Contains(step.Id)).Select(step => new MovedStep(step, old[step.Id].Number))],
            In = [.. says.Except(said)],
            Out = [.. said.Except(says)],
        };
    }
}
