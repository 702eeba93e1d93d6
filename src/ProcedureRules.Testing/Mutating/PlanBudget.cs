namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// The plans that are made to see whether one mutant is noticed. What so many plans at as different moments do not notice, more of them
/// seldom do; of a sort of difference that seldom shows, nearly all that does shows in the first plans.
/// </summary>
internal sealed class PlanBudget
{
    private const int Most = 12;
    private const int MostSlow = 1;

    // By DifferenceSort, measured on the shipped packs: what more plans would notice is less than one mutant in a hundred.
    private static readonly int[] MostOf = [Most, 2, 3, 1, 1];

    private readonly int[] _made = new int[MostOf.Length];
    private int _slow;

    /// <summary>Whether no more plans are made.</summary>
    public bool IsSpent => _made.Sum() >= Most;

    /// <summary>Whether the plan of a moment is made; it counts then.</summary>
    public bool Allows(TriedStage tried, MadeDifference difference)
    {
        var sort = (int)difference.Sort;
        // Where the plan shows the rule at work, it does so at other steps than those that it lacks.
        if (difference.Sort == DifferenceSort.Absent && tried.IsAtWork) return false;
        if (IsSpent || _made[sort] >= MostOf[sort] || (tried.Of.At.IsSlow && _slow++ >= MostSlow)) return false;
        _made[sort]++;
        return true;
    }
}
