using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>any(KIND)</c>: the vehicle has a part of the kind.</summary>
internal sealed class AnyPart(Kind kind) : TruthNode
{
    public override Truth Evaluate(IBeliefs beliefs, Binding binding)
    {
        var truth = Truth.No;
        var parts = beliefs.PartsOf(kind);
        for (var i = 0; i < parts.Count && truth != Truth.Yes; i++) truth = Kleene.Or(truth, beliefs.Exists(parts[i]));
        return truth;
    }

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf)
    {
        foreach (var part in partsOf(kind)) reads.OfPart(part);
    }

    public override bool IsKnown(IBeliefs beliefs, Binding binding) => Evaluate(beliefs, binding) != Truth.Unknown;
}
