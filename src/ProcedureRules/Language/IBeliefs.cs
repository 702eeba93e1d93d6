using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>What a compiled expression may read. Total: every key has an answer.</summary>
public interface IBeliefs
{
    /// <summary>What is held of a fact: merged from all statements and rules.</summary>
    Value Fact(Part part, FactDefinition fact);

    /// <summary>The least value that satisfies every demand of at least so much on a fact: from what is surely demanded to what may be.</summary>
    Quantities.Quantity Demanded(Part part, FactDefinition fact);

    /// <summary>The greatest value that every demand of at most so much on a fact allows: from what may be allowed to what surely is at most.</summary>
    Quantities.Quantity Allowed(Part part, FactDefinition fact);

    /// <summary>Whether a relation holds.</summary>
    Truth Related(Relation relation, Part a, Part b);

    /// <summary>Whether the vehicle has the part.</summary>
    Truth Exists(Part part);

    /// <summary>The parts of a kind on the vehicle (structural: existing or possible).</summary>
    IReadOnlyList<Part> PartsOf(Kind kind);
}
