using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>The name of the part that has the least or the greatest value of its kind; several where the values leave it open.</summary>
internal sealed class ExtremePart(Members members, bool isLeast) : TextNode, IGathers
{
    public IReadOnlyList<Node> Gathered => members.Nodes;

    public override Value Evaluate(IBeliefs beliefs, Binding binding)
    {
        var all = members.Of(beliefs, binding).ToList();
        var extreme = isLeast ? Aggregate.Least(all, members.Dimension) : Aggregate.Greatest(all, members.Dimension);
        return Value.OfText(string.Join(" or ", all
            .Where(member => isLeast ? member.Value.Low <= extreme.High : member.Value.High >= extreme.Low)
            .Select(member => member.Part.Text)));
    }

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf) =>
        members.AddReads(reads, binding, partsOf);

    public override bool IsKnown(IBeliefs beliefs, Binding binding) => members.IsKnown(beliefs, binding);
}
