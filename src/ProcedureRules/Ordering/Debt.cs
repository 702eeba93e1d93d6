namespace ProcedureRules.Ordering;

/// <summary>A step done that is to be undone: with the states that it found.</summary>
/// <param name="Work">The step.</param>
/// <param name="Found">The states of its changes before it.</param>
/// <param name="Since">When it was done.</param>
/// <param name="Next">The debt before it.</param>
internal sealed record Debt(Work Work, int[] Found, int Since, Debt? Next)
{
    /// <summary>The debts without the latest one of a step.</summary>
    public static Debt? Without(Debt? debts, Work work) => debts is null ? null
        : ReferenceEquals(debts.Work, work) ? debts.Next
        : debts with { Next = Without(debts.Next, work) };

    /// <summary>The debts that a state leaves: what has come back to what its step found by another way is settled.</summary>
    public static Debt? LeftIn(int[] state, Debt? debts)
    {
        if (debts is null) return null;
        var next = LeftIn(state, debts.Next);
        if (debts.Work.Shifts.Length > 0 && debts.HasComeBack(state)) return next;
        return ReferenceEquals(next, debts.Next) ? debts : debts with { Next = next };
    }

    /// <summary>The latest debt of a step, or null.</summary>
    public static Debt? Of(Debt? debts, Work work)
    {
        for (; debts is not null; debts = debts.Next)
            if (ReferenceEquals(debts.Work, work)) return debts;
        return null;
    }

    private bool HasComeBack(int[] state)
    {
        for (var i = 0; i < Found.Length; i++)
            if (state[Work.Shifts[i].Variable] != Found[i]) return false;
        return true;
    }
}
