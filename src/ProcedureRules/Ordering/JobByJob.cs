using ProcedureRules.Language;

namespace ProcedureRules.Ordering;

/// <summary>Several jobs in one world, one after the other: each in an order that it has by itself.</summary>
internal static class JobByJob
{
    /// <summary>The end of it; null where the steps of one stand in the way of another.</summary>
    /// <param name="motion">The laws of the world with all jobs in it.</param>
    /// <param name="jobs">The steps of each job, in order.</param>
    public static Moment? Of(Motion motion, IEnumerable<IReadOnlyList<Step>> jobs)
    {
        var moment = Moment.Start(motion.World);
        foreach (var step in jobs.SelectMany(job => job))
        {
            if (!motion.World.ByStep.TryGetValue(step, out var work)) return null;
            if (motion.Can(moment, work)) moment = moment.After(motion.World, work);
            // What a job before has done for good is not done again.
            else if (moment.Times(work) == 0) return null;
        }

        return motion.IsEnd(moment) ? moment : null;
    }
}
