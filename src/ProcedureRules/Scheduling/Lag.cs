namespace ProcedureRules.Scheduling;

/// <summary>A bound on the time between the end of another piece of work and the start of this one.</summary>
/// <param name="Other">The other one.</param>
/// <param name="Seconds">At least, or at most, so long.</param>
internal readonly record struct Lag(int Other, long Seconds);
