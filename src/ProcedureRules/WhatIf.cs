using ProcedureRules.Diagnostics;
using ProcedureRules.Explaining;
using ProcedureRules.Plans;

namespace ProcedureRules;

/// <summary>What a supposition would make of a plan; the session it was asked of stays as it was.</summary>
/// <param name="Difference">What would change; null where there is no plan before or after to compare.</param>
/// <param name="After">The plan that would follow, or why there would be none.</param>
/// <param name="Diagnostics">The mistakes in what was supposed.</param>
public sealed record WhatIf(PlanDifference? Difference, PlanResult? After, IReadOnlyList<Diagnostic> Diagnostics);
