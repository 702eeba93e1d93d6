using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Planning;

/// <summary>The supports of an atom in the order in which a reader wants to hear of them.</summary>
internal sealed class Grounds(BeliefState beliefs)
{
    private readonly Foundations _foundations = new(beliefs);

    /// <summary>The effects that support an atom without resting on it, the firmest first, then the most direct; whatever the order of inference.</summary>
    /// <remarks>What a step brings about that only would find something out comes after all that the plan holds for sure: that step may never be done.</remarks>
    public IEnumerable<RecordEffect> Of(Atom atom) => _foundations.SupportsOf(atom)
        .OrderByDescending(support => beliefs.Required(support.Effect.Record, support.Effect.Index) >= Assurance.Provisional)
        .ThenByDescending(support => support.Level)
        .ThenBy(support => support.Round)
        .ThenBy(support => RecordName.Of(support.Effect.Record), StringComparer.Ordinal)
        .Select(support => support.Effect);
}
