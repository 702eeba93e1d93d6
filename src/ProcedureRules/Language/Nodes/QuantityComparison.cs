using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>Two quantities compared.</summary>
internal sealed class QuantityComparison(Syntax.Expression syntax, string symbol, QuantityNode left, QuantityNode right) : Comparison(syntax)
{
    private readonly Func<Quantity, Quantity, Truth> _compare = symbol switch
    {
        "<" => Quantity.LessThan,
        "<=" => Quantity.LessOrEqual,
        ">" => Quantity.GreaterThan,
        ">=" => Quantity.GreaterOrEqual,
        _ => Quantity.EqualTo,
    };

    public string Symbol { get; } = symbol;

    public QuantityNode Left { get; } = left;

    public QuantityNode Right { get; } = right;

    public override IReadOnlyList<Node> Children { get; } = [left, right];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding) =>
        _compare(Left.Evaluate(beliefs, binding), Right.Evaluate(beliefs, binding));

    public override void AddThresholds(List<(FactKey Key, Quantity Threshold)> thresholds, IBeliefs beliefs, Binding binding)
    {
        Add(Left, Right);
        Add(Right, Left);

        void Add(QuantityNode side, QuantityNode other)
        {
            if (side is not FactQuantity fact || other.All().Any(node => node is FactQuantity read && read.Slot == fact.Slot && read.Fact == fact.Fact)) return;
            if (other.Evaluate(beliefs, binding) is { IsBounded: true } threshold)
                thresholds.Add((new(binding.Part(fact.Slot), fact.Fact), threshold.As(fact.Dimension)));
        }
    }
}
