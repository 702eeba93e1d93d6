using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>One key that an expression reads under a binding; beliefs re-evaluate a condition when one of them changes.</summary>
public abstract record Reading
{
    private Reading() { }

    /// <summary>The id, as <c>--set</c> takes it: a fact's path, a relation with its parts, a part's name.</summary>
    public string Id => this switch
    {
        OfFact fact => fact.Key.ToString(),
        OfDemand demand => demand.Key.ToString(),
        OfRelation relation => $"{relation.Relation.Name}({relation.A.Name}, {relation.B.Name})",
        OfPart part => $"part {part.Part.Name}",
        _ => "",
    };

    /// <summary>The merged value of a fact.</summary>
    public sealed record OfFact(FactKey Key) : Reading;

    /// <summary>The band of demands on a fact.</summary>
    public sealed record OfDemand(FactKey Key) : Reading;

    /// <summary>Whether a relation holds.</summary>
    public sealed record OfRelation(Relation Relation, Part A, Part B) : Reading;

    /// <summary>Whether a part exists.</summary>
    public sealed record OfPart(Part Part) : Reading;
}
