using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>A value gathered from the parts of a kind: how many, their sum, the least or the greatest of them.</summary>
internal sealed class Aggregate(Members members, Aggregate.Gather gather, Dimension result) : QuantityNode(result), IGathers
{
    /// <summary>Gathers the values of parts that count, or may count.</summary>
    internal delegate Quantity Gather(IEnumerable<(Part Part, bool IsSure, Quantity Value)> members, Dimension dimension);

    public IReadOnlyList<Node> Gathered => members.Nodes;

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding) => gather(members.Of(beliefs, binding), Dimension);

    public override void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf) =>
        members.AddReads(reads, binding, partsOf);

    public override bool IsKnown(IBeliefs beliefs, Binding binding) => members.IsKnown(beliefs, binding);

    /// <summary>The sum; what may or may not count adds anything from nothing to its value.</summary>
    public static Quantity Sum(IEnumerable<(Part Part, bool IsSure, Quantity Value)> members, Dimension dimension)
    {
        var nothing = Quantity.Point(0, dimension);
        return members.Aggregate(nothing, (sum, member) => sum + (member.IsSure ? member.Value : Quantity.Hull(nothing, member.Value)));
    }

    /// <summary>The least. Of nothing it is beyond every figure, so that no part's coming can raise it.</summary>
    public static Quantity Least(IEnumerable<(Part Part, bool IsSure, Quantity Value)> members, Dimension dimension)
    {
        var (low, high) = (double.MaxValue, double.PositiveInfinity);
        foreach (var (_, isSure, value) in members)
        {
            low = Math.Min(low, value.Low);
            if (isSure) high = Math.Min(high, value.High);
        }

        return Quantity.Between(low, high, dimension);
    }

    /// <summary>The greatest; of nothing, below every figure.</summary>
    public static Quantity Greatest(IEnumerable<(Part Part, bool IsSure, Quantity Value)> members, Dimension dimension)
    {
        var (low, high) = (double.NegativeInfinity, double.MinValue);
        foreach (var (_, isSure, value) in members)
        {
            high = Math.Max(high, value.High);
            if (isSure) low = Math.Max(low, value.Low);
        }

        return Quantity.Between(low, high, dimension);
    }
}
