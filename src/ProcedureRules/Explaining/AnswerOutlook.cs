using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>What one answer to a question would make of the plan.</summary>
/// <param name="Answer">The answer; of a figure the stretch that comes to the same.</param>
/// <param name="Difference">What would change; null where there would be no plan.</param>
public sealed record AnswerOutlook(Wording Answer, PlanDifference? Difference)
{
    /// <summary>Whether it changes more than that the question is answered.</summary>
    public bool Matters => Difference is not { } difference
        || difference.StepsIn.Count + difference.StepsOut.Count + difference.StepsMoved.Count > 0
        || difference.Before.Labour != difference.After.Labour
        || difference.In.Concat(difference.Out).Any(item => item.Sort != PlanItemSort.Question);
}
