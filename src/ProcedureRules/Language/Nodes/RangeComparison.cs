using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>x is 0.020..0.025 in</c>: the value lies within a range that is written out.</summary>
internal sealed class RangeComparison(Syntax.Expression syntax, QuantityNode operand, Quantity range) : Comparison(syntax)
{
    private readonly Quantity? _low = double.IsFinite(range.Low) ? Quantity.Point(range.Low, range.Dimension) : null;
    private readonly Quantity? _high = double.IsFinite(range.High) ? Quantity.Point(range.High, range.Dimension) : null;

    public QuantityNode Operand { get; } = operand;

    public Quantity Range { get; } = range;

    public override IReadOnlyList<Node> Children { get; } = [operand];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding)
    {
        var value = Operand.Evaluate(beliefs, binding);
        var above = _low is { } low ? Quantity.LessOrEqual(low, value) : Truth.Yes;
        return above == Truth.No ? Truth.No : Kleene.And(above, _high is { } high ? Quantity.LessOrEqual(value, high) : Truth.Yes);
    }

    public override void AddThresholds(List<(FactKey Key, Quantity Threshold)> thresholds, IBeliefs beliefs, Binding binding)
    {
        if (Operand is not FactQuantity fact) return;
        var key = new FactKey(binding.Part(fact.Slot), fact.Fact);
        if (_low is { } low) thresholds.Add((key, low.As(fact.Dimension)));
        if (_high is { } high) thresholds.Add((key, high.As(fact.Dimension)));
    }
}
