using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>A step that two plans have at another turn.</summary>
/// <param name="Step">The step, as the plan after has it.</param>
/// <param name="NumberBefore">Its number in the plan before.</param>
public sealed record MovedStep(PlanStep Step, int NumberBefore);
