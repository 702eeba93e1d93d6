using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>Reads values of facts: quantities in the right dimension, words of the fact, texts.</summary>
internal static class ValueReader
{
    /// <summary>Whether a text takes what was assumed back.</summary>
    public static bool IsUnknown(YamlScalar text) => text is { IsPlain: true, Text: "unknown" };

    /// <summary>The value, or null after a complaint.</summary>
    public static Value? Read(FactKey key, YamlScalar text, DiagnosticBag bag)
    {
        var type = key.Fact.Type;
        if (type.IsText)
            return Value.OfText(text.Text);
        return type.Dimension is { } dimension ? ReadQuantity(key, dimension, text, bag) : ReadWords(key, text, bag);
    }

    private static Value? ReadQuantity(FactKey key, Dimension dimension, YamlScalar text, DiagnosticBag bag)
    {
        if (!Quantity.TryRead(text.Text, dimension, out var quantity, out var fault))
        {
            var complaint = Messages.ValueFault(text.SpanAt(fault.Offset, fault.Length), fault.Message, fault.Suggestion);
            // Where neither figure nor unit could be made out, it helps to hear what is due.
            var isUnclear = fault.Kind is QuantityFaultKind.NotANumber or QuantityFaultKind.UnknownUnit && fault.Suggestion is null;
            bag.Add(isUnclear ? complaint.Note(Messages.Due(Dimensions.Phrase(dimension), QuantityFaults.UnitsOf(dimension))) : complaint);
            return null;
        }

        if (!PhysicalLimits.Allow(quantity))
        {
            bag.Add(Messages.Impossible(text.Span, text.Text, Dimensions.Phrase(dimension), PhysicalLimits.Least(dimension)!.Value.ToDisplay(UnitSystem.Us)));
            return null;
        }

        return Value.Of(key.Fact.Type, quantity);
    }

    private static Value? ReadWords(FactKey key, YamlScalar text, DiagnosticBag bag)
    {
        var words = 0UL;
        var at = 0;
        foreach (var piece in text.Text.Split('|'))
        {
            var word = piece.Trim();
            var index = key.Fact.Type.Words.ToList().IndexOf(word);
            if (index < 0)
            {
                var lead = piece.Length - piece.TrimStart().Length;
                bag.Add(Messages.NotAWord(text.SpanAt(at + lead, word.Length), word, key.ToString(), key.Fact.Type.Words));
                return null;
            }

            words |= 1UL << index;
            at += piece.Length + 1;
        }

        return Value.OfWords(key.Fact.Type, words);
    }
}
