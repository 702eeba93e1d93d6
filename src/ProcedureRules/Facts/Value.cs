using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Facts;

/// <summary>
/// What is held of a fact: an interval of a quantity, or the words that are still open, or a text. More words or a wider interval
/// mean that less is known.
/// </summary>
public readonly record struct Value
{
    private Value(FactType type, Quantity quantity, ulong words, string? text)
    {
        Type = type;
        Quantity = quantity;
        Words = words;
        Text = text;
    }

    /// <summary>The type of the value.</summary>
    public FactType Type { get; }

    /// <summary>The interval, for a quantity.</summary>
    public Quantity Quantity { get; }

    /// <summary>The open words as bits over <see cref="FactType.Words"/>, for words.</summary>
    public ulong Words { get; }

    /// <summary>The text, for free text.</summary>
    public string? Text { get; }

    /// <summary>Whether a single figure or word is left (a text always is one).</summary>
    public bool IsPoint => Type.IsQuantity ? Quantity.IsPoint : Type.IsText ? Text is not null : (Words & (Words - 1)) == 0;

    /// <summary>A quantity.</summary>
    public static Value Of(FactType type, Quantity quantity) => new(type, quantity, 0, null);

    /// <summary>A set of open words.</summary>
    public static Value OfWords(FactType type, ulong words) => new(type, default, words, null);

    /// <summary>A free text.</summary>
    public static Value OfText(string text) => new(FactType.FreeText, default, 0, text);

    /// <summary>Yes or no.</summary>
    public static Value Of(bool yes) => new(FactType.YesNo, default, yes ? 2UL : 1UL, null);

    /// <summary>What an unknown fact is taken to be: its plausible range, or every word.</summary>
    public static Value Unknown(FactDefinition fact) => fact.Type.IsQuantity
        ? Of(fact.Type, fact.Plausible ?? Quantity.Anything(fact.Type.Dimension!.Value))
        : new(fact.Type, default, AllWords(fact.Type), null);

    /// <summary>The bits of every word of a type.</summary>
    public static ulong AllWords(FactType type) => type.Words.Count == 64 ? ulong.MaxValue : (1UL << type.Words.Count) - 1;

    /// <summary>The smallest value that holds both.</summary>
    public Value Hull(Value other) => Type.IsQuantity
        ? Of(Type, Quantity.Hull(Quantity, other.Quantity))
        : Type.IsText ? (Text == other.Text ? this : OfText($"{Text} / {other.Text}")) : new(Type, default, Words | other.Words, null);

    /// <summary>What both allow, or null where they contradict each other.</summary>
    public Value? Intersect(Value other)
    {
        if (Type.IsQuantity) return Quantity.Intersect(Quantity, other.Quantity) is { } common ? Of(Type, common) : null;
        if (Type.IsText) return Text == other.Text ? this : null;
        var words = Words & other.Words;
        return words == 0 ? null : new(Type, default, words, null);
    }

    /// <summary>The value as a technician reads it.</summary>
    public string In(UnitSystem units)
    {
        if (Type.IsQuantity) return Quantity.ToDisplay(units);
        if (Type.IsText) return Text ?? "";
        var open = Words;
        return string.Join(" or ", Type.Words.Where((_, i) => (open >> i & 1) != 0).Select(word => word.Replace('_', ' ')));
    }

    /// <summary>Whether everything that <paramref name="other"/> allows is allowed here.</summary>
    public bool Contains(Value other) => Type.IsQuantity
        ? Quantity.Contains(other.Quantity)
        : Type.IsText ? Text == other.Text : (other.Words & ~Words) == 0;
}
