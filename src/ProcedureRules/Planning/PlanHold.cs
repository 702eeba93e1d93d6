namespace ProcedureRules.Planning;

/// <summary>The plan holds here until something is known.</summary>
/// <param name="Text">What is waited for and what hangs on it.</param>
/// <param name="Questions">The ids of the questions that end it.</param>
/// <param name="Reason">Why.</param>
public sealed record PlanHold(Wording Text, IReadOnlyList<string> Questions, Reason Reason);
