namespace ProcedureRules.Scheduling;

/// <summary>A stretch of time in seconds since the start of a schedule.</summary>
internal readonly record struct Stretch(long From, long To);
