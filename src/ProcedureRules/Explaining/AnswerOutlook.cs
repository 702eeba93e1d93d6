using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>What one answer to a question would make of the plan.</summary>
/// <param name="Answer">The answer; of a figure the stretch that comes to the same.</param>
/// <param name="Difference">What would change; null where there would be no plan.</param>
public sealed record AnswerOutlook(Wording Answer, PlanDifference? Difference);
