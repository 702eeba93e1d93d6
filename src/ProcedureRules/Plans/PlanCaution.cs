using ProcedureRules.Language;

namespace ProcedureRules.Plans;

/// <summary>A caution of a plan, shown before the step it guards.</summary>
/// <param name="Signal">The signal word.</param>
/// <param name="Text">The words.</param>
/// <param name="Reason">Why.</param>
public sealed record PlanCaution(Signal Signal, Wording Text, Reason Reason);
