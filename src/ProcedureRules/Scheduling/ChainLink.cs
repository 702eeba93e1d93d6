namespace ProcedureRules.Scheduling;

/// <summary>A step of the critical chain: what puts it off puts the finish off.</summary>
/// <param name="StepId">The id of the step.</param>
/// <param name="Cause">Why it starts no earlier.</param>
public sealed record ChainLink(string StepId, ChainCause Cause);
