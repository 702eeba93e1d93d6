using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>A fact that is free text: shown, never reasoned with.</summary>
internal sealed class FactText(int slot, FactDefinition fact) : TextNode
{
    public int Slot { get; } = slot;

    public FactDefinition Fact { get; } = fact;

    public override Value Evaluate(IBeliefs beliefs, Binding binding) => beliefs.Fact(binding.Part(Slot), Fact);

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf) =>
        reads.OfFact(binding.Part(Slot), Fact);

    public override bool IsKnown(IBeliefs beliefs, Binding binding) => !string.IsNullOrWhiteSpace(Evaluate(beliefs, binding).Text);
}
