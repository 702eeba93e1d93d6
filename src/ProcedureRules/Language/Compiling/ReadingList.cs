using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>The keys that an expression reads, as a list.</summary>
internal sealed class ReadingList : List<Reading>, IReadings
{
    public void OfFact(Part part, FactDefinition fact) => Add(new Reading.OfFact(new(part, fact)));

    public void OfDemand(Part part, FactDefinition fact) => Add(new Reading.OfDemand(new(part, fact)));

    public void OfRelation(Relation relation, Part a, Part b) => Add(new Reading.OfRelation(relation, a, b));

    public void OfPart(Part part) => Add(new Reading.OfPart(part));
}
