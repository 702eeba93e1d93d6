using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Expectations;

/// <summary>Statements on a fact contradict each other.</summary>
internal sealed record ConflictExpected(SourceSpan Span, string Text, string Part, FactDefinition Fact) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var path = $"{Part}.{Fact.Name}";
        var conflicts = outcome.Plan.Conflicts;
        return Judgement.Of(
            conflicts.Any(conflict => conflict.About.Id == path),
            () => conflicts.Count == 0 ? "no statements contradict each other" : $"a conflict on {string.Join(", ", conflicts.Select(conflict => conflict.About.Id))}",
            () => Explanation.Why(outcome, path));
    }
}
