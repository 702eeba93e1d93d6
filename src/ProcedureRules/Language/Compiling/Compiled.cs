using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Wraps checked nodes into what other layers see.</summary>
internal static class Compiled
{
    public static Test Test(string text, SourceSpan span, TruthNode node)
    {
        var comparisons = node.All().OfType<Comparison>().ToArray();
        return new()
        {
            Text = text,
            Span = span,
            Evaluate = node.Evaluate,
            Reads = (binding, partsOf) => Reads(node, binding, partsOf),
            TellReads = node.AddReads,
            Node = node,
            Thresholds = comparisons.Length == 0 ? null : (binding, beliefs) =>
            {
                var thresholds = new List<(FactKey, Quantity)>();
                foreach (var comparison in comparisons) comparison.AddThresholds(thresholds, beliefs, binding);
                return thresholds;
            },
        };
    }

    public static ValueExpression Value(string text, SourceSpan span, FactType type, Node node) => new()
    {
        Text = text,
        Span = span,
        Type = type,
        Evaluate = node switch
        {
            QuantityNode quantity => (beliefs, binding) => Value(quantity, type, beliefs, binding),
            WordsNode words => (beliefs, binding) => Facts.Value.OfWords(type, words.Evaluate(beliefs, binding)),
            TruthNode truth => OfTruth(new TruthWords(truth)),
            TextNode fact => fact.Evaluate,
            _ => (_, _) => Facts.Value.OfText(text),
        },
        Reads = (binding, partsOf) => Reads(node, binding, partsOf),
        TellReads = node.AddReads,
        Node = node,
    };

    private static Func<IBeliefs, Binding, Value> OfTruth(TruthWords words) =>
        (beliefs, binding) => Facts.Value.OfWords(FactType.YesNo, words.Evaluate(beliefs, binding));

    private static Value Value(QuantityNode node, FactType type, IBeliefs beliefs, Binding binding) =>
        Facts.Value.Of(type, node.Evaluate(beliefs, binding).As(type.Dimension.GetValueOrDefault()));

    private static ReadingList Reads(Node node, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf)
    {
        var reads = new ReadingList();
        node.AddReads(reads, binding, partsOf);
        return reads;
    }
}
