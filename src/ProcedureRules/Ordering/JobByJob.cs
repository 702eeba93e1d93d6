using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Ordering;

/// <summary>
/// Several jobs in one world, one after the other: each in an order that it has by itself, and the next one as far as one waits for it. What
/// several of them prove is proved behind the last, since a proof before the work proves nothing of it.
/// </summary>
internal static class JobByJob
{
    /// <summary>The end of it; null where the jobs stand in each other's way.</summary>
    /// <param name="motion">The laws of the world with all jobs in it.</param>
    /// <param name="jobs">The steps of each job, in order.</param>
    public static Moment? Of(Motion motion, IReadOnlyList<IReadOnlyList<Step>> jobs)
    {
        var left = jobs.Select((job, i) => new Queue<Step>(job.Where(step => step.Operation.Phase != Phase.Prove || !jobs.Skip(i + 1).Any(later => later.Contains(step))))).ToList();
        if (left.Exists(job => job.Any(step => !motion.World.ByStep.ContainsKey(step)))) return null;
        var served = new List<Step>();
        var moment = Moment.Start(motion.World);
        for (left.RemoveAll(IsDone); left.Count > 0; left.RemoveAll(IsDone))
        {
            if (left.Find(job => motion.Can(moment, Next(job))) is { } next) Do(next.Dequeue());
            // What another job has done is not done again, unless that job has undone it since.
            else if (left.Find(job => moment.Times(Next(job)) > 0 && Next(job).Phase != Phase.Prove) is { } done) served.Add(done.Dequeue());
            else if (served.Find(step => motion.Can(moment, motion.World.ByStep[step])) is { } undone && served.Remove(undone)) Do(undone);
            else return null;
        }

        return motion.IsEnd(moment) ? moment : null;

        void Do(Step step) => moment = moment.After(motion.World, motion.World.ByStep[step]);

        Work Next(Queue<Step> job) => motion.World.ByStep[job.Peek()];

        static bool IsDone(Queue<Step> job) => job.Count == 0;
    }
}
