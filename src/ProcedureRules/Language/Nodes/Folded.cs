using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>The least or greatest of several values.</summary>
internal sealed class Folded(Func<Quantity, Quantity, Quantity> operation, QuantityNode[] items, Dimension result) : QuantityNode(result)
{
    public override IReadOnlyList<Node> Children { get; } = items;

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding)
    {
        var value = items[0].Evaluate(beliefs, binding).As(Dimension);
        for (var i = 1; i < items.Length; i++) value = operation(value, items[i].Evaluate(beliefs, binding).As(Dimension));
        return value;
    }
}
