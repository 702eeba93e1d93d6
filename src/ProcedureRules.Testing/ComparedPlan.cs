using ProcedureRules.Explaining;

namespace ProcedureRules.Testing;

/// <summary>A plan that the two versions make otherwise.</summary>
/// <param name="Name">The case of a scenario, with its turn where it is not the first, or the generated vehicle.</param>
/// <param name="Difference">What changes; null where only one of the versions has a plan.</param>
/// <param name="Trouble">Why there is none; null where both have one.</param>
public sealed record ComparedPlan(string Name, PlanDifference? Difference, string? Trouble);
