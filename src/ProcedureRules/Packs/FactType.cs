using ProcedureRules.Quantities;

namespace ProcedureRules.Packs;

/// <summary>What values a fact can have: a quantity of a dimension, one of some words, or free text (shown, never reasoned with).</summary>
public sealed class FactType
{
    private FactType(Dimension? dimension, IReadOnlyList<string> words)
    {
        Dimension = dimension;
        Words = words;
    }

    /// <summary>Yes or no.</summary>
    public static FactType YesNo { get; } = new(null, ["no", "yes"]);

    /// <summary>Free text.</summary>
    public static FactType FreeText { get; } = new(null, []);

    /// <summary>The dimension of a quantity; null for words and text.</summary>
    public Dimension? Dimension { get; }

    /// <summary>The words, at most 64; empty for quantities and text.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>Whether values are quantities.</summary>
    public bool IsQuantity => Dimension is not null;

    /// <summary>Whether values are words (yes and no included).</summary>
    public bool IsWords => Words.Count > 0;

    /// <summary>Whether values are yes or no.</summary>
    public bool IsYesNo => ReferenceEquals(this, YesNo);

    /// <summary>Whether values are free text.</summary>
    public bool IsText => ReferenceEquals(this, FreeText);

    /// <summary>The type of quantities of a dimension.</summary>
    public static FactType Of(Dimension dimension) => new(dimension, []);

    /// <summary>The type of one of the words.</summary>
    public static FactType OneOf(IReadOnlyList<string> words) => new(null, words);
}
