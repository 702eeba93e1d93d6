using ProcedureRules.Plans;

namespace ProcedureRules.Scheduling;

/// <summary>A wait that would be longer than it may be.</summary>
/// <param name="StepId">The id of the step it stands at.</param>
/// <param name="Wait">The wait.</param>
/// <param name="Over">How much too long.</param>
public sealed record UnkeptWait(string StepId, PlanWait Wait, TimeSpan Over);
