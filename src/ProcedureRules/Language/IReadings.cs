using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>Takes in the keys that an expression reads, one by one and without an object for each.</summary>
internal interface IReadings
{
    /// <summary>The merged value of a fact.</summary>
    void OfFact(Part part, FactDefinition fact);

    /// <summary>The band of demands on a fact.</summary>
    void OfDemand(Part part, FactDefinition fact);

    /// <summary>Whether a relation holds.</summary>
    void OfRelation(Relation relation, Part a, Part b);

    /// <summary>Whether a part exists.</summary>
    void OfPart(Part part);
}
