using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>The words that are open for a fact.</summary>
internal sealed class FactWords(int slot, FactDefinition fact) : WordsNode(fact.Type)
{
    public int Slot { get; } = slot;

    public FactDefinition Fact { get; } = fact;

    public override ulong Evaluate(IBeliefs beliefs, Binding binding) => beliefs.Fact(binding.Part(Slot), Fact).Words;

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf) =>
        reads.OfFact(binding.Part(Slot), Fact);

    public override bool IsKnown(IBeliefs beliefs, Binding binding) => Evaluate(beliefs, binding) != Value.AllWords(Type);
}
