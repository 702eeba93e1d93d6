using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>A sum, difference, product or quotient; the checker has seen that the dimensions allow it.</summary>
internal sealed class Arithmetic(Func<Quantity, Quantity, Quantity> operation, QuantityNode left, QuantityNode right, Dimension result) : QuantityNode(result)
{
    public override IReadOnlyList<Node> Children { get; } = [left, right];

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding) =>
        operation(left.Evaluate(beliefs, binding), right.Evaluate(beliefs, binding));
}
