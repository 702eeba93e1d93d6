namespace ProcedureRules.Plans;

/// <summary>A tool, a supply, an offer or an assumption of a plan.</summary>
/// <param name="Text">The words.</param>
/// <param name="Steps">The ids of the steps it is for.</param>
/// <param name="IsSure">Whether it is sure, or only possible.</param>
/// <param name="Reason">Why; null for an assumption.</param>
public sealed record PlanItem(Wording Text, IReadOnlyList<string> Steps, bool IsSure, Reason? Reason);
