using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Planning;

/// <summary>The supports of an atom in the order in which a reader wants to hear of them.</summary>
/// <param name="beliefs">What is believed.</param>
/// <param name="steps">The steps of a plan, on which reasons are to rest where they can; null: any.</param>
internal sealed class Grounds(BeliefState beliefs, IReadOnlySet<Step>? steps = null)
{
    private readonly Foundations _all = new(beliefs);
    private readonly Foundations? _inPlan = steps is null ? null : new(beliefs, record => Foundations.IsWithin(record, steps));

    /// <summary>The effects that support an atom without resting on it, the firmest first, then the most direct; whatever the order of inference.</summary>
    public IEnumerable<RecordEffect> Of(Atom atom) => Ordered(_inPlan?.SupportsOf(atom).ToList() is { Count: > 0 } inPlan ? inPlan : _all.SupportsOf(atom));

    private static IEnumerable<RecordEffect> Ordered(IEnumerable<(RecordEffect Effect, Assurance Level, int Round)> supports) => supports
        .OrderByDescending(support => support.Level)
        .ThenBy(support => support.Round)
        .ThenBy(support => RecordName.Of(support.Effect.Record), StringComparer.Ordinal)
        .Select(support => support.Effect);
}
