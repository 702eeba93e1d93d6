namespace ProcedureRules.Ordering;

/// <summary>
/// Finds an order by simulating the states: the best step first, and another one where that leads nowhere. Bounded, so that it ends; the
/// order found is then judged by the validator, which shares no code with it.
/// </summary>
internal sealed class Sequencer(World world, int mostMoments, int mostRepeats, CancellationToken cancellation)
{
    private readonly Motion _motion = new(world, mostRepeats);

    /// <summary>The moment at which the search got stuck with the most steps behind it, where it found no order.</summary>
    public Moment? Furthest { get; private set; }

    /// <summary>Whether the bound was reached before every order had been tried.</summary>
    public bool GaveUp { get; private set; }

    /// <summary>The laws that the order obeys.</summary>
    public Motion Motion => _motion;

    /// <summary>The end of an order, or null where there is none.</summary>
    public Moment? Find()
    {
        var preference = new Preference(_motion);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<(Moment Moment, IEnumerator<Work> Next)>();
        var left = mostMoments;
        var start = Moment.Start(world);
        if (_motion.IsEnd(start)) return start;
        Open(start);
        while (open.Count > 0)
        {
            cancellation.ThrowIfCancellationRequested();
            var (moment, next) = open.Peek();
            if (!next.MoveNext())
            {
                open.Pop();
                continue;
            }
            var then = moment.After(world, next.Current);
            if (_motion.IsEnd(then)) return then;
            if (!seen.Add(then.Key())) continue;
            if (left-- <= 0)
            {
                GaveUp = true;
                return null;
            }
            // A search that has come this far mostly finds nothing. Where there is nothing to find that is soon proved.
            if (mostMoments - left == 2 * world.Works.Count && new JointReachability(world).IsOutOfReach()) return null;
            Open(then);
        }
        return null;

        void Open(Moment moment)
        {
            if (Furthest is null || Progress(moment) > Progress(Furthest)) Furthest = moment;
            open.Push((moment, preference.At(moment).GetEnumerator()));
        }
    }

    private int Progress(Moment moment) => world.Works.Count(work => work.IsDue && moment.Times(work) > 0);
}
