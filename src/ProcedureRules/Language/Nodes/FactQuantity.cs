using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>The value of a fact that is a quantity.</summary>
internal sealed class FactQuantity(int slot, FactDefinition fact) : QuantityNode(fact.Type.Dimension.GetValueOrDefault())
{
    public int Slot { get; } = slot;

    public FactDefinition Fact { get; } = fact;

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding)
    {
        var value = beliefs.Fact(binding.Part(Slot), Fact).Quantity;
        return value.Dimension == Dimension ? value
            : DimensionRules.Accepts(Dimension, value.Dimension) ? value.As(Dimension) : Quantity.Anything(Dimension);
    }

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf) =>
        reads.OfFact(binding.Part(Slot), Fact);

    public override bool IsKnown(IBeliefs beliefs, Binding binding) =>
        beliefs.Fact(binding.Part(Slot), Fact) is var value && value != Value.Unknown(Fact) && !double.IsInfinity(value.Quantity.High - value.Quantity.Low);
}
