using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>A figure.</summary>
internal sealed class ConstantQuantity(Quantity value) : QuantityNode(value.Dimension)
{
    public Quantity Value { get; } = value;

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding) => Value;
}
