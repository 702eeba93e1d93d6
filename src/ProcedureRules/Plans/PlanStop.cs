namespace ProcedureRules.Plans;

/// <summary>The job cannot go on this way, and why.</summary>
/// <param name="Text">The words.</param>
/// <param name="IsSure">Whether it is sure, or only possible (and stands as if sure).</param>
/// <param name="Reason">Why.</param>
public sealed record PlanStop(Wording Text, bool IsSure, Reason Reason);
