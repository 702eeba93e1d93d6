using ProcedureRules.Language;

namespace ProcedureRules.Ordering;

/// <summary>Several jobs in one world, one after the other: each in an order that it has by itself, and the next one as far as one waits for it.</summary>
internal static class JobByJob
{
    /// <summary>The end of it; null where the jobs stand in each other's way.</summary>
    /// <param name="motion">The laws of the world with all jobs in it.</param>
    /// <param name="jobs">The steps of each job, in order.</param>
    public static Moment? Of(Motion motion, IEnumerable<IReadOnlyList<Step>> jobs)
    {
        var left = new List<Queue<Work>>();
        foreach (var job in jobs)
        {
            var works = new Queue<Work>();
            foreach (var step in job)
            {
                if (!motion.World.ByStep.TryGetValue(step, out var work)) return null;
                works.Enqueue(work);
            }

            left.Add(works);
        }

        var moment = Moment.Start(motion.World);
        for (left.RemoveAll(IsDone); left.Count > 0; left.RemoveAll(IsDone))
        {
            if (left.Find(job => motion.Can(moment, job.Peek())) is { } next) moment = moment.After(motion.World, next.Dequeue());
            // What another job has done for good is not done again.
            else if (left.Find(job => moment.Times(job.Peek()) > 0) is { } served) served.Dequeue();
            else return null;
        }

        return motion.IsEnd(moment) ? moment : null;

        static bool IsDone(Queue<Work> job) => job.Count == 0;
    }
}
