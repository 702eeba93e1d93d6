using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>An expression that is a quantity.</summary>
internal abstract class QuantityNode(Dimension dimension) : Node
{
    public Dimension Dimension { get; } = dimension;

    public abstract Quantity Evaluate(IBeliefs beliefs, Binding binding);
}
