using ProcedureRules.Facts;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules;

/// <summary>What several jobs on one vehicle save by being done together.</summary>
/// <param name="Together">The labour of the plan for all of them.</param>
/// <param name="Alone">The labour of each job planned by itself.</param>
public sealed record JobSharing(Quantity Together, IReadOnlyList<JobAlone> Alone)
{
    /// <summary>The labour of all jobs, each by itself.</summary>
    public Quantity Apart => Alone.Select(job => job.Labour).Aggregate((sum, labour) => sum + labour);

    /// <summary>The labour saved to the minute, from the middle of one range to the middle of the other; never less than nothing.</summary>
    public Quantity Saving => Quantity.Point(60 * Math.Max(0, Math.Round(((Apart.Midpoint - Together.Midpoint) ?? 0) / 60)), Dimension.Duration);

    internal static JobSharing? Of(Plan together, IEnumerable<(JobRequest Job, Plan? Plan)> alone)
    {
        var jobs = alone.ToList();
        // A plan that stops has no steps: that is no saving.
        return jobs.Count < 2 || together.IsStopped || jobs.Exists(job => job.Plan is null or { Stops.Count: > 0 })
            ? null
            : new JobSharing(together.Labour, [.. jobs.Select(job => new JobAlone(job.Job, job.Plan!.Labour))]);
    }
}
