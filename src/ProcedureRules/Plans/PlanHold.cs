namespace ProcedureRules.Plans;

/// <summary>The plan holds here until something is known.</summary>
/// <param name="Text">What is waited for and what hangs on it.</param>
/// <param name="Questions">The ids of the questions that end it.</param>
/// <param name="Reason">Why.</param>
/// <param name="PlansAgain">
/// Whether the plan from here on stands only for one answer, so that it has to be made again with the answer. Up to here it is checked for
/// every answer.
/// </param>
public sealed record PlanHold(Wording Text, IReadOnlyList<string> Questions, Reason Reason, bool PlansAgain = false);
