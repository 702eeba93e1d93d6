using ProcedureRules.Scheduling;

namespace ProcedureRules.Testing.Expectations;

/// <summary>Where and when a job is done: what its elapsed time hangs on.</summary>
/// <param name="Shop">The shop.</param>
/// <param name="Start">When the job may begin.</param>
internal sealed record Workday(Workshop Shop, DateTime Start)
{
    /// <summary>The usual shop, on a Monday at eight.</summary>
    public static readonly Workday Usual = new(Workshop.Usual, new DateTime(2026, 1, 5, 8, 0, 0));
}
