using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Planning;

/// <summary>The supports of an atom in the order in which a reader wants to hear of them.</summary>
/// <param name="beliefs">What is believed.</param>
/// <param name="steps">The steps of a plan, on which reasons are to rest where they can; null: any.</param>
internal sealed class Grounds(BeliefState beliefs, IReadOnlySet<Step>? steps = null)
{
    private readonly IReadOnlyList<Foundations> _foundations = Foundations.InOrder(beliefs, steps);

    /// <summary>The effects that support an atom without resting on it, the firmest first, then the most direct; whatever the order of inference.</summary>
    public IEnumerable<RecordEffect> Of(Atom atom) => Ordered(_foundations.Select(foundations => foundations.SupportsOf(atom).ToList()).FirstOrDefault(supports => supports.Count > 0) ?? []);

    private static IEnumerable<RecordEffect> Ordered(IEnumerable<(RecordEffect Effect, Assurance Level, int Round)> supports) => supports
        .OrderByDescending(support => support.Level)
        .ThenBy(support => support.Round)
        .ThenBy(support => RecordName.Of(support.Effect.Record), StringComparer.Ordinal)
        .Select(support => support.Effect);
}
