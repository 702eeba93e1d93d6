namespace ProcedureRules.Ordering;

/// <summary>
/// Which step comes next where several can. First what takes nothing from a step still to come; then what helps a step that is stuck; then
/// the way back, last off first on; what costs another cycle comes last.
/// </summary>
internal sealed class Preference(Motion motion)
{
    /// <summary>The steps that can be done at a moment, the best first; found only as far as they are asked for.</summary>
    public IEnumerable<Work> At(Moment moment)
    {
        var given = new HashSet<Work>();
        foreach (var work in InOrder(moment))
            if (given.Add(work)) yield return work;
    }

    private IEnumerable<Work> InOrder(Moment moment)
    {
        var works = motion.World.Works;
        var there = works.Where(work => !work.IsWayBack && IsStillDue(moment, work)).ToList();
        var (ready, stuck) = (new List<(Work Work, int Harm)>(), new List<Work>());
        foreach (var work in Harmless(moment, there.OrderBy(work => ThereKey(moment, work)), Set(there), ready, stuck)) yield return work;

        var back = works.Where(work => work.IsWayBack && IsStillDue(moment, work))
            .Concat(moment.Owed().Select(debt => debt.Work.UndoneBy!)).Distinct().ToList();
        var toCome = Set(there.Concat(back).Concat(there.Where(work => work.IsReturned).Select(work => work.UndoneBy!)));
        var helpers = Helpers(moment, stuck);
        foreach (var work in helpers)
            if (Harm(moment, work, toCome) == 0) yield return work;

        var since = Since(moment);
        var (returning, waiting) = (new List<(Work Work, int Harm)>(), new List<Work>());
        foreach (var work in Harmless(moment, back.OrderBy(work => BackKey(moment, work, since)), toCome, returning, waiting)) yield return work;
        foreach (var (work, _) in ready.OrderBy(entry => entry.Harm)) yield return work;
        foreach (var work in helpers) yield return work;
        if (there.Count == 0)
            foreach (var work in back.Count == 0 ? EndHelpers(moment) : Helpers(moment, waiting)) yield return work;
        foreach (var (work, _) in returning.OrderBy(entry => entry.Harm)) yield return work;
    }

    // Those that can be done and take nothing from what is to come, judged as far as they are asked for; all that were judged are written down.
    private IEnumerable<Work> Harmless(Moment moment, IEnumerable<Work> inTurn, bool[] toCome, List<(Work Work, int Harm)> can, List<Work> cannot)
    {
        foreach (var work in inTurn)
        {
            if (!motion.Can(moment, work))
            {
                cannot.Add(work);
                continue;
            }
            var harm = Harm(moment, work, toCome);
            can.Add((work, harm));
            if (harm == 0) yield return work;
        }
    }

    private static bool IsStillDue(Moment moment, Work work) => work.IsDue && moment.Times(work) == 0;

    private bool[] Set(IEnumerable<Work> works)
    {
        var set = new bool[motion.World.Works.Count];
        foreach (var work in works) set[work.Index] = true;
        return set;
    }

    // How many steps to come a step takes something from. What serves one step of the way back is undone right after it, so that it takes nothing
    // from the others.
    private int Harm(Moment moment, Work work, bool[] toCome)
    {
        if (work is { Serves.Count: > 0, IsReturned: true }) return 0;
        return work.Shifts.Length == 1
            ? ReadersToCome(work.Shifts[0]).Count(other => Motion.Spoils(moment, work, other))
            : work.Shifts.SelectMany(ReadersToCome).Distinct().Count(other => Motion.Spoils(moment, work, other));

        IEnumerable<Work> ReadersToCome(Shift shift) => motion.World.ReadersOf(shift.Variable).Where(other => toCome[other.Index] && !ReferenceEquals(other, work));
    }

    // The executable steps that lead towards what is missing, found backwards from the stuck steps; those of the first stuck step that
    // can be helped come first.
    private List<Work> Helpers(Moment moment, IEnumerable<Work> stuck)
    {
        var found = new List<Work>();
        var seen = new HashSet<Work>();
        foreach (var work in stuck) Help(moment, work, seen, found);
        return found;
    }

    private List<Work> EndHelpers(Moment moment)
    {
        var found = new List<Work>();
        var seen = new HashSet<Work>();
        foreach (var end in motion.World.Ends)
            if (!end.State.Holds(moment.State)) Reach(moment, end.State, seen, found);
        for (var i = 0; i < moment.Passed.Length; i++)
            if (moment.Passed[i] < motion.World.Waypoints[i].Count)
                Reach(moment, motion.World.Waypoints[i][moment.Passed[i]], seen, found);
        return found;
    }

    private void Help(Moment moment, Work work, HashSet<Work> seen, List<Work> found)
    {
        if (!seen.Add(work)) return;
        var obstacles = motion.Obstacles(moment, work).ToList();
        if (obstacles.Count == 0)
        {
            if (!found.Contains(work)) found.Add(work);
            return;
        }
        foreach (var obstacle in obstacles)
        {
            if (obstacle.Wanted is { } wanted) Reach(moment, wanted, seen, found);
            else if (obstacle.Earlier is { } earlier) Help(moment, earlier, seen, found);
        }
    }

    private void Reach(Moment moment, Guard wanted, HashSet<Work> seen, List<Work> found)
    {
        foreach (var (work, shift) in motion.World.ChangersOf(wanted.Variable))
        {
            var to = shift.To >= 0 ? shift.To : moment.Found(work, shift.Variable) ?? -1;
            if (to >= 0 && wanted.States.Has(to)) Help(moment, work, seen, found);
        }
    }

    private static Key ThereKey(Moment moment, Work work) => new((int)work.Phase, 0, Distance(moment, work), work.Step.Name);

    // Last off, first on; what is done only for a step of the way back takes that step's turn.
    private static Key BackKey(Moment moment, Work work, int[] since) =>
        new((int)work.Phase, -work.Serves.Select(served => since[served.Index]).Append(since[work.Index]).Max(), Distance(moment, work), work.Step.Name);

    // When what each step undoes was last done; 0 where nothing waits for it.
    private int[] Since(Moment moment)
    {
        var since = new int[motion.World.Works.Count];
        for (var debt = moment.Debts; debt is not null; debt = debt.Next)
            if (debt.Work.UndoneBy is { } undoing && ReferenceEquals(undoing.Undoes, debt.Work) && since[undoing.Index] == 0) since[undoing.Index] = debt.Since;
        return since;
    }

    private static int Distance(Moment moment, Work work) => moment.Did is { } last ? Math.Abs(last.Place - work.Place) : work.Place;

    private readonly record struct Key(int Phase, int Age, int Distance, string Name) : IComparable<Key>
    {
        public int CompareTo(Key other) =>
            Phase != other.Phase ? Phase.CompareTo(other.Phase)
            : Age != other.Age ? Age.CompareTo(other.Age)
            : Distance != other.Distance ? Distance.CompareTo(other.Distance)
            : string.CompareOrdinal(Name, other.Name);
    }
}
