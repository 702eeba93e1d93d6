using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>What an aggregate ranges over: the parts of a kind for which a condition holds, each with a value.</summary>
internal sealed class Members(Kind kind, QuantityNode value, TruthNode? condition)
{
    public IReadOnlyList<Node> Nodes { get; } = condition is null ? [value] : [value, condition];

    public Dimension Dimension => value.Dimension;

    /// <summary>The parts that count or may count, whether each surely does, and its value.</summary>
    public IEnumerable<(Part Part, bool IsSure, Quantity Value)> Of(IBeliefs beliefs, Binding binding)
    {
        foreach (var part in beliefs.PartsOf(kind))
        {
            var each = binding.Each(part);
            var counts = beliefs.Exists(part);
            if (condition is not null && counts != Truth.No) counts = Kleene.And(counts, condition.Evaluate(beliefs, each));
            if (counts != Truth.No) yield return (part, counts == Truth.Yes, value.Evaluate(beliefs, each));
        }
    }

    public void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf)
    {
        foreach (var part in partsOf(kind))
        {
            reads.OfPart(part);
            foreach (var node in Nodes) node.AddReads(reads, binding.Each(part), partsOf);
        }
    }

    /// <summary>Whether it is known which parts count, and the value of each.</summary>
    public bool IsKnown(IBeliefs beliefs, Binding binding)
    {
        var isAny = false;
        foreach (var (part, isSure, _) in Of(beliefs, binding))
        {
            if (!isSure || !value.IsKnown(beliefs, binding.Each(part))) return false;
            isAny = true;
        }

        return isAny;
    }
}
