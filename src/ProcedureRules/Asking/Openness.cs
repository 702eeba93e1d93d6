using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Asking;

/// <summary>Which keys are not known, and whom to ask instead of a fact that only rules set.</summary>
internal sealed class Openness(BeliefState beliefs)
{
    /// <summary>The unknown keys behind some readings that somebody can answer.</summary>
    public IReadOnlyList<Reading> Behind(IEnumerable<Reading> readings)
    {
        var found = new List<Reading>();
        var seen = new HashSet<Reading>();
        foreach (var reading in readings) Walk(reading, seen, found);
        return found;
    }

    /// <summary>Whether a fact leaves nothing open.</summary>
    public bool IsKnown(FactKey key)
    {
        var value = beliefs.Fact(key.Part, key.Fact);
        if (value.Type.IsQuantity) return value.Quantity.IsPoint;
        return value.Type.IsText ? !string.IsNullOrEmpty(value.Text) : System.Numerics.BitOperations.PopCount(value.Words) == 1;
    }

    /// <summary>The unknown keys that possible records read together, themselves or through what sets a fact that they read.</summary>
    public IReadOnlyList<IReadOnlySet<Reading>> ReadTogether() =>
    [
        .. from record in beliefs.Network.Records
           where Enumerable.Range(0, record.Effects.Count).Any(i => beliefs.Available(record, i) > Assurance.No)
           let open = Behind(beliefs.Network.ReadingsOf(record)).ToHashSet()
           where open.Count > 1
           select open,
    ];

    private void Walk(Reading reading, HashSet<Reading> seen, List<Reading> found)
    {
        if (!seen.Add(reading)) return;
        switch (reading)
        {
            case Reading.OfFact fact when !IsKnown(fact.Key):
                if (!fact.Key.Fact.IsDerived && !fact.Key.Fact.IsDemand) found.Add(reading);
                else Walk(fact.Key, seen, found);
                break;
            case Reading.OfDemand demand:
                Walk(demand.Key, seen, found);
                break;
            case Reading.OfRelation relation when beliefs.Related(relation.Relation, relation.A, relation.B) == Truth.Unknown:
                found.Add(reading);
                break;
            case Reading.OfPart part when beliefs.Exists(part.Part) == Truth.Unknown:
                found.Add(reading);
                break;
        }
    }

    private void Walk(FactKey key, HashSet<Reading> seen, List<Reading> found)
    {
        foreach (var setter in beliefs.SettersOf(key))
            foreach (var reading in beliefs.Network.ReadingsOf(setter)) Walk(reading, seen, found);
    }
}
