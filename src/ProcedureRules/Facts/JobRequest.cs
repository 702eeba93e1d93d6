using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>A job asked for on a vehicle.</summary>
/// <param name="Job">The job.</param>
/// <param name="On">The part it is on; the vehicle itself where the job names no kind.</param>
public sealed record JobRequest(JobDefinition Job, Part On)
{
    /// <summary>The job in words: <c>Replace the oil pan</c>.</summary>
    public string Title => Job.Text.Text.Replace("{it}", On.Text, StringComparison.Ordinal);
}
