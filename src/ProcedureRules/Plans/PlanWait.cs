using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>A wait that must lie between an earlier step (or an event before the job) and the step it stands at.</summary>
/// <param name="AfterStep">The id of the step it counts from; null for an event before the job.</param>
/// <param name="Least">At least so long; null: no least.</param>
/// <param name="Most">At most so long; null: no most.</param>
/// <param name="Text">The words.</param>
/// <param name="Reason">Why.</param>
public sealed record PlanWait(string? AfterStep, Quantity? Least, Quantity? Most, Wording Text, Reason Reason)
{
    /// <summary>How long ago the event before the job was when the job begins; null for a wait after a step.</summary>
    public Quantity? Age { get; init; }
}
