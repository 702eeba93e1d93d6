namespace ProcedureRules.Choosing;

/// <summary>
/// By what sets of choices are compared: fewer that wait for an answer, then fewer steps down from the first rank (the furthest first), then
/// likely labour, then its upper end, then pack order. Of a set that is not complete it is a bound that nothing built on it can come below.
/// </summary>
internal sealed record DecisionKey(int Waiting, IReadOnlyList<int> Ranks, long Twice, long Most, IReadOnlyList<int> Ways) : IComparable<DecisionKey>
{
    /// <inheritdoc/>
    public int CompareTo(DecisionKey? other)
    {
        if (other is null) return 1;
        if (Waiting != other.Waiting) return Waiting.CompareTo(other.Waiting);
        if (CompareRanks(this, other) is var ranks and not 0) return ranks;
        if (Twice != other.Twice) return Twice.CompareTo(other.Twice);
        return Most != other.Most ? Most.CompareTo(other.Most) : Compare(Ways, other.Ways, -1);
    }

    /// <summary>Which of two goes further down from the first ranks.</summary>
    public static int CompareRanks(DecisionKey one, DecisionKey other) => Compare(one.Ranks, other.Ranks, 0);

    /// <summary>Steps down from the first rank as they are compared.</summary>
    public static IReadOnlyList<int> Sorted(IEnumerable<int> ranks) => [.. ranks.Where(rank => rank > 0).OrderDescending()];

    private static int Compare(IReadOnlyList<int> mine, IReadOnlyList<int> theirs, int missing)
    {
        for (var i = 0; i < Math.Max(mine.Count, theirs.Count); i++)
        {
            var (one, other) = (i < mine.Count ? mine[i] : missing, i < theirs.Count ? theirs[i] : missing);
            if (one != other) return one.CompareTo(other);
        }

        return 0;
    }
}
