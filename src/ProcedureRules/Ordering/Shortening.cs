namespace ProcedureRules.Ordering;

/// <summary>
/// Takes out of an order what only goes to and fro: what is put back and taken off again before anything needed it back, what is done twice
/// where once serves. Each order it gives is simulated anew from the start.
/// </summary>
internal sealed class Shortening(Motion motion)
{
    /// <summary>The same end with as few cycles as can be had by leaving pairs out.</summary>
    public Moment Of(Moment end)
    {
        while (Shorter(end) is { } shorter) end = shorter;
        return end;
    }

    private Moment? Shorter(Moment end)
    {
        var steps = end.Steps();
        for (var first = 0; first < steps.Count; first++)
        {
            for (var second = first + 1; second < steps.Count; second++)
            {
                if (!ArePair(steps[first], steps[second]) || !MayGo(end, steps[first]) || !MayGo(end, steps[second])) continue;
                if (Replayed(steps, first, second) is { } shorter) return shorter;
                break;
            }
        }

        return null;
    }

    // What has to be done is done once at least.
    private static bool MayGo(Moment end, Work work) => end.Times(work) > 1 || !work.IsDue;

    private static bool ArePair(Work first, Work second) => ReferenceEquals(first.Undoes, second) || ReferenceEquals(second.Undoes, first);

    private Moment? Replayed(IReadOnlyList<Work> steps, int first, int second)
    {
        var moment = Moment.Start(motion.World);
        for (var i = 0; i < steps.Count; i++)
        {
            if (i == first || i == second) continue;
            if (!motion.Can(moment, steps[i])) return null;
            moment = moment.After(motion.World, steps[i]);
        }

        return motion.IsEnd(moment) ? moment : null;
    }
}
