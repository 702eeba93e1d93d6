namespace ProcedureRules.Scheduling;

/// <summary>A span of time that is not known to the minute.</summary>
/// <param name="Low">If everything takes its least and what is only possible turns out not to be needed.</param>
/// <param name="Likely">If each step takes the time halfway between its least and its most, and all that is possible is done.</param>
/// <param name="High">If everything takes its most.</param>
public readonly record struct Estimate(TimeSpan Low, TimeSpan Likely, TimeSpan High);
