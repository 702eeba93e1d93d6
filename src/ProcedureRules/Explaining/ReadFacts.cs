using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Explaining;

/// <summary>Notes what a text reads when it is rendered: the figures and words that stand in it.</summary>
internal sealed class ReadFacts(IBeliefs beliefs) : IBeliefs
{
    private readonly List<Reading> _found = [];

    /// <summary>What a text under a binding reads, in the order in which it is read.</summary>
    public static IReadOnlyList<Reading> Of(Template text, IBeliefs beliefs, Binding binding)
    {
        var reader = new ReadFacts(beliefs);
        text.Render(reader, binding, UnitSystem.Us);
        return [.. reader._found.Distinct()];
    }

    /// <inheritdoc/>
    public Value Fact(Part part, FactDefinition fact)
    {
        _found.Add(new Reading.OfFact(new FactKey(part, fact)));
        return beliefs.Fact(part, fact);
    }

    /// <inheritdoc/>
    public Quantity Demanded(Part part, FactDefinition fact)
    {
        _found.Add(new Reading.OfDemand(new FactKey(part, fact)));
        return beliefs.Demanded(part, fact);
    }

    /// <inheritdoc/>
    public Quantity Allowed(Part part, FactDefinition fact)
    {
        _found.Add(new Reading.OfDemand(new FactKey(part, fact)));
        return beliefs.Allowed(part, fact);
    }

    /// <inheritdoc/>
    public Truth Related(Relation relation, Part a, Part b)
    {
        _found.Add(new Reading.OfRelation(relation, a, b));
        return beliefs.Related(relation, a, b);
    }

    /// <inheritdoc/>
    public Truth Exists(Part part)
    {
        _found.Add(new Reading.OfPart(part));
        return beliefs.Exists(part);
    }

    /// <inheritdoc/>
    public IReadOnlyList<Part> PartsOf(Kind kind) => beliefs.PartsOf(kind);
}
