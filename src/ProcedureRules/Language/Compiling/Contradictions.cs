using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Finds conditions of one rule that cannot hold together: each can, but what they leave of a fact or a state is nothing.</summary>
internal sealed class Contradictions(DiagnosticBag bag)
{
    private readonly Dictionary<(int Slot, object Definition), (ulong Left, SourceSpan Span)> _words = [];
    private readonly Dictionary<(int Slot, FactDefinition Fact), (Bounds Left, SourceSpan Span)> _figures = [];

    /// <summary>Adds a condition that must hold together with those before; false if it cannot.</summary>
    public bool Add(TruthNode node, SourceSpan span) => node switch
    {
        Conjunction => node.Children.OfType<TruthNode>().All(child => Add(child, span)),
        Negation { Children: [WordComparison { Operand: FactWords fact } test] } => AddWords(fact.Slot, fact.Fact, ~test.Words, span),
        WordComparison { Operand: FactWords fact } test => AddWords(fact.Slot, fact.Fact, test.Words, span),
        YesNoTruth { Operand: FactWords fact } => AddWords(fact.Slot, fact.Fact, 2, span),
        Negation { Children: [YesNoTruth { Operand: FactWords fact }] } => AddWords(fact.Slot, fact.Fact, 1, span),
        RangeComparison { Operand: FactQuantity fact } test =>
            AddFigure(fact, ">=", test.Range, span) && AddFigure(fact, "<=", test.Range, span),
        QuantityComparison { Left: FactQuantity fact, Right: ConstantQuantity bound } test => AddFigure(fact, test.Symbol, bound.Value, span),
        QuantityComparison { Left: ConstantQuantity bound, Right: FactQuantity fact } test =>
            AddFigure(fact, Turned(test.Symbol), bound.Value, span),
        _ => true,
    };

    /// <summary>Adds a state condition.</summary>
    public bool Add(StateCondition state, SourceSpan span) => AddWords(state.Slot, state.Aspect, state.States.Bits, span);

    private static string Turned(string symbol) => symbol switch { "<" => ">", "<=" => ">=", ">" => "<", ">=" => "<=", _ => symbol };

    private bool AddWords(int slot, object definition, ulong words, SourceSpan span)
    {
        var (left, first) = _words.TryGetValue((slot, definition), out var before) ? before : (ulong.MaxValue, span);
        if ((left & words) == 0 && first != span) return Refuse(span, first, definition);
        _words[(slot, definition)] = (left & words, first);
        return true;
    }

    private bool AddFigure(FactQuantity fact, string symbol, Quantity bound, SourceSpan span)
    {
        var key = (fact.Slot, fact.Fact);
        var (left, first) = _figures.TryGetValue(key, out var before) ? before : (Bounds.Open, span);
        var next = left.With(symbol, bound);
        if (next.IsEmpty && first != span) return Refuse(span, first, fact.Fact);
        _figures[key] = (next, first);
        return true;
    }

    private bool Refuse(SourceSpan span, SourceSpan first, object definition)
    {
        bag.Add(Messages.Contradiction(span, definition.ToString()!, first));
        return false;
    }

    /// <summary>What is left between two bounds, either of which may be out.</summary>
    private readonly record struct Bounds(double Low, bool IsLowOut, double High, bool IsHighOut)
    {
        public static readonly Bounds Open = new(double.NegativeInfinity, false, double.PositiveInfinity, false);

        public bool IsEmpty => Low > High || (Low == High && (IsLowOut || IsHighOut));

        public Bounds With(string symbol, Quantity bound) => symbol switch
        {
            "<" => Below(bound.High, isOut: true),
            "<=" => Below(bound.High, isOut: false),
            ">" => Above(bound.Low, isOut: true),
            ">=" => Above(bound.Low, isOut: false),
            _ => Below(bound.High, isOut: false).Above(bound.Low, isOut: false),
        };

        private Bounds Below(double high, bool isOut) =>
            high < High || (high == High && isOut) ? this with { High = high, IsHighOut = isOut } : this;

        private Bounds Above(double low, bool isOut) =>
            low > Low || (low == Low && isOut) ? this with { Low = low, IsLowOut = isOut } : this;
    }
}
