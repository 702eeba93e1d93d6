using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>Whether a relation holds between two parts.</summary>
internal sealed class RelationHolds(Relation relation, int first, int second) : TruthNode
{
    public Relation Relation { get; } = relation;

    public int First { get; } = first;

    public int Second { get; } = second;

    public override Truth Evaluate(IBeliefs beliefs, Binding binding) =>
        beliefs.Related(Relation, binding.Part(First), binding.Part(Second));

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf) =>
        reads.OfRelation(Relation, binding.Part(First), binding.Part(Second));

    public override bool IsKnown(IBeliefs beliefs, Binding binding) => Evaluate(beliefs, binding) != Truth.Unknown;
}
