using ProcedureRules.Plans;

namespace ProcedureRules.Scheduling;

/// <summary>Something to order, borrow or arrange before starting.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">The words.</param>
/// <param name="By">When it is first needed.</param>
/// <param name="StepId">The id of the step that needs it first; null where the whole job does.</param>
/// <param name="IsSure">Whether it is sure to be needed.</param>
public sealed record Preparation(PreparationKind Kind, Wording Text, DateTime By, string? StepId, bool IsSure);
