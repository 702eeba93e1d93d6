using ProcedureRules.Facts;

namespace ProcedureRules.Beliefs;

/// <summary>
/// The least and the greatest rank that something can turn out to have. What rests on an open fact has a range: the fact may come to be
/// measured, or stay assumed.
/// </summary>
internal readonly record struct RankRange(Source Low, Source High)
{
    /// <summary>Does not weaken what rests on it.</summary>
    public static RankRange Neutral => Exactly(Source.Measured);

    /// <summary>May turn out anyhow.</summary>
    public static RankRange Open => new(Source.None, Source.Measured);

    /// <summary>Whether it can only turn out one way.</summary>
    public bool IsExact => Low == High;

    /// <summary>One rank.</summary>
    public static RankRange Exactly(Source source) => new(source, source);

    /// <summary>The rank of what rests on both.</summary>
    public static RankRange Weakest(RankRange a, RankRange b) =>
        new(a.Low < b.Low ? a.Low : b.Low, a.High < b.High ? a.High : b.High);
}
