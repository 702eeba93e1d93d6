namespace ProcedureRules.Ordering;

/// <summary>A moment of a plan in the making: what has been done, and the states then. Immutable.</summary>
internal sealed class Moment
{
    private readonly byte[] _times;

    private Moment(int[] state, byte[] times) => (State, _times) = (state, times);

    public Moment? Earlier { get; private init; }
    public Work? Did { get; private init; }
    public int[] State { get; }
    public Debt? Debts { get; private init; }

    /// <summary>How many waypoints of each job have been passed.</summary>
    public required int[] Passed { get; init; }
    public int Count { get; private init; }

    public static Moment Start(World world) => new(world.Start, new byte[world.Works.Count])
    {
        Passed = Pass(world, new int[world.Waypoints.Count], world.Start),
    };

    public int Times(Work work) => _times[work.Index];

    /// <summary>The states after a step that starts from here.</summary>
    public int[] StateAfter(Work work)
    {
        var state = (int[])State.Clone();
        for (var i = 0; i < work.Shifts.Length; i++)
        {
            var shift = work.Shifts[i];
            state[shift.Variable] = shift.To >= 0 ? shift.To : Found(work, shift.Variable) ?? state[shift.Variable];
        }
        return state;
    }

    public Moment After(World world, Work work)
    {
        var state = StateAfter(work);
        var times = (byte[])_times.Clone();
        times[work.Index]++;
        var debts = work.Undoes is { } undone ? Debt.Without(Debts, undone) : Debts;
        debts = Debt.LeftIn(state, debts);
        if (work.UndoneBy is not null)
            debts = new Debt(work, [.. work.Shifts.Select(shift => State[shift.Variable])], Count + 1, debts);
        return new Moment(state, times)
        {
            Earlier = this,
            Did = work,
            Debts = debts,
            Passed = Pass(world, Passed, state),
            Count = Count + 1,
        };
    }

    /// <summary>The state that the undone step found, for a change back to it.</summary>
    public int? Found(Work work, int variable)
    {
        if (work.Undoes is not { } undone || Debt.Of(Debts, undone) is not { } debt) return null;
        for (var i = 0; i < undone.Shifts.Length; i++)
            if (undone.Shifts[i].Variable == variable) return debt.Found[i];
        return null;
    }

    public IEnumerable<Debt> Owed()
    {
        for (var debt = Debts; debt is not null; debt = debt.Next)
            if (debt.Work.IsReturned) yield return debt;
    }

    /// <summary>The steps so far, in order.</summary>
    public IReadOnlyList<Work> Steps()
    {
        var steps = new Work[Count];
        for (var moment = this; moment.Did is not null; moment = moment.Earlier!) steps[moment.Count - 1] = moment.Did;
        return steps;
    }

    /// <summary>What tells two moments apart for what can still follow.</summary>
    public string Key()
    {
        var key = new System.Text.StringBuilder(State.Length + _times.Length + 16);
        foreach (var state in State) key.Append((char)(state + 1));
        key.Append('\uffff');
        foreach (var times in _times) key.Append((char)(times > 0 ? 2 : 1));
        key.Append('\uffff');
        for (var debt = Debts; debt is not null; debt = debt.Next)
        {
            key.Append((char)debt.Work.Index);
            foreach (var found in debt.Found) key.Append((char)found);
        }
        key.Append('\uffff');
        foreach (var passed in Passed) key.Append((char)passed);
        return key.ToString();
    }

    private static int[] Pass(World world, int[] passed, int[] state)
    {
        int[]? next = null;
        for (var i = 0; i < passed.Length; i++)
        {
            var way = world.Waypoints[i];
            var at = passed[i];
            while (at < way.Count && way[at].Holds(state)) at++;
            if (at != passed[i]) (next ??= (int[])passed.Clone())[i] = at;
        }
        return next ?? passed;
    }
}
