using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>A value made of one other: its negative, its size.</summary>
internal sealed class Converted(Func<Quantity, Quantity> operation, QuantityNode operand) : QuantityNode(operand.Dimension)
{
    public override IReadOnlyList<Node> Children { get; } = [operand];

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding) => operation(operand.Evaluate(beliefs, binding));
}
