using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Plans;

/// <summary>The supports of an atom in the order in which a reader wants to hear of them.</summary>
/// <param name="beliefs">What is believed.</param>
/// <param name="steps">The steps of a plan, on which reasons are to rest where they can; null: any.</param>
internal sealed class Grounds(BeliefState beliefs, IReadOnlySet<Step>? steps = null)
{
    private readonly IReadOnlyList<Foundations> _foundations = Foundations.InOrder(beliefs, steps);

    /// <summary>The effects that support an atom without resting on it, the firmest first, then the most direct; whatever the order of inference.</summary>
    /// <remarks>What a step brings about that only would find something out comes after all that the plan holds for sure: that step may never be done.</remarks>
    public IEnumerable<RecordEffect> Of(Atom atom) => Ordered(_foundations.Select(foundations => foundations.SupportsOf(atom).ToList()).FirstOrDefault(supports => supports.Count > 0) ?? []);

    private IEnumerable<RecordEffect> Ordered(IEnumerable<(RecordEffect Effect, Assurance Level, int Round)> supports) => supports
        .OrderByDescending(support => beliefs.Required(support.Effect.Record, support.Effect.Index) >= Assurance.Provisional)
        .ThenByDescending(support => support.Level)
        .ThenBy(support => support.Round)
        .ThenBy(support => support.Effect.Record.Name, StringComparer.Ordinal)
        .Select(support => support.Effect);
}
