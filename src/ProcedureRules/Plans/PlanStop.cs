namespace ProcedureRules.Plans;

/// <summary>The job cannot go on this way, and why; or perhaps cannot: then the plan holds before what it is about.</summary>
/// <param name="Text">The words.</param>
/// <param name="IsSure">Whether it is sure, or only possible.</param>
/// <param name="Reason">Why.</param>
public sealed record PlanStop(Wording Text, bool IsSure, Reason Reason);
