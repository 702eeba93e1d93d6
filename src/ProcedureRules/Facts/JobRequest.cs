using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>A job asked for on a vehicle.</summary>
/// <param name="Job">The job.</param>
/// <param name="On">The part it is on; the vehicle itself where the job names no kind.</param>
public sealed record JobRequest(JobDefinition Job, Part On);
