using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>What all demands on a fact ask for at least, or allow at most.</summary>
internal sealed class DemandedQuantity(int slot, FactDefinition fact, bool isMost) : QuantityNode(fact.Type.Dimension.GetValueOrDefault())
{
    public int Slot { get; } = slot;

    public FactDefinition Fact { get; } = fact;

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding)
    {
        var band = isMost ? beliefs.Allowed(binding.Part(Slot), Fact) : beliefs.Demanded(binding.Part(Slot), Fact);
        return band.Dimension == Dimension ? band
            : DimensionRules.Accepts(Dimension, band.Dimension) ? band.As(Dimension) : Quantity.Anything(Dimension);
    }

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf) =>
        reads.OfDemand(binding.Part(Slot), Fact);

    public override bool IsKnown(IBeliefs beliefs, Binding binding) =>
        Evaluate(beliefs, binding) is var band && (double.IsFinite(band.Low) || double.IsFinite(band.High));
}
