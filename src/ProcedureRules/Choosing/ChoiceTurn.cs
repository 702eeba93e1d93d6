namespace ProcedureRules.Choosing;

/// <summary>When a set of choices in the making takes its turn in the search.</summary>
/// <param name="Bound">What no complete set built on it can come below.</param>
/// <param name="Depth">How many choices are decided.</param>
/// <param name="Number">How many came before it.</param>
internal readonly record struct ChoiceTurn(DecisionKey Bound, int Depth, int Number)
{
    /// <summary>The best first; of equal ones the deepest, then the earliest.</summary>
    public static IComparer<ChoiceTurn> BestFirst { get; } = Comparer<ChoiceTurn>.Create((one, other) =>
        one.Bound.CompareTo(other.Bound) is var bound and not 0 ? bound
        : one.Depth != other.Depth ? other.Depth.CompareTo(one.Depth)
        : one.Number.CompareTo(other.Number));

    /// <summary>The deepest first; of equal ones the best, then the earliest.</summary>
    public static IComparer<ChoiceTurn> DeepestFirst { get; } = Comparer<ChoiceTurn>.Create((one, other) =>
        one.Depth != other.Depth ? other.Depth.CompareTo(one.Depth)
        : one.Bound.CompareTo(other.Bound) is var bound and not 0 ? bound
        : one.Number.CompareTo(other.Number));
}
