namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// The plans that are made to see whether one mutant is noticed. What so many plans at as different moments do not notice, more of them
/// seldom do; of a sort of difference that seldom shows, nearly all that does shows in the first plans.
/// </summary>
internal sealed class PlanBudget
{
    private const int Most = 12;

    // By DifferenceSort, measured on the shipped packs: what more plans would notice is about one mutant in a hundred.
    private static readonly int[] MostOf = [Most, 3, 1, 3, 1, 0, 0];

    private readonly int[] _made = new int[MostOf.Length];

    /// <summary>Whether no more plans are made.</summary>
    public bool IsSpent => _made.Sum() >= Most;

    /// <summary>Whether the plan of a moment is made; it counts then.</summary>
    public bool Allows(TriedStage tried, MadeDifference difference)
    {
        var sort = (int)difference.Sort;
        // A plan that is long to find takes as long as all others of a mutant: it is made where there is no other.
        if (IsSpent || _made[sort] >= MostOf[sort] || (tried.Of.At.IsSlow && _made.Sum() > 0)) return false;
        _made[sort]++;
        return true;
    }
}
