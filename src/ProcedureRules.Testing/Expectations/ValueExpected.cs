using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Expectations;

/// <summary>A fact, or what is demanded of it, lies within a value.</summary>
/// <param name="Span">Where it is written.</param>
/// <param name="Text">As it is written.</param>
/// <param name="Part">The part's name.</param>
/// <param name="Fact">The fact.</param>
/// <param name="Reads">What is compared: <c>value</c>, <c>at_least</c> or <c>at_most</c>.</param>
/// <param name="Due">The value; null where nothing may be known.</param>
internal sealed record ValueExpected(SourceSpan Span, string Text, string Part, FactDefinition Fact, string Reads, Value? Due) : Expectation(Span, Text)
{
    /// <inheritdoc/>
    public override Judgement Judge(Outcome outcome)
    {
        var beliefs = outcome.Plan.Beliefs;
        var part = outcome.Plan.Situation.Parts.FirstOrDefault(part => part.Name == Part);
        if (part is null) return Judgement.Of(false, () => $"the vehicle has no '{Part}'");
        var came = Reads switch
        {
            "at_least" => Value.Of(Fact.Type, beliefs.Demanded(part, Fact)),
            "at_most" => Value.Of(Fact.Type, beliefs.Allowed(part, Fact)),
            _ => beliefs.Fact(part, Fact),
        };
        return Judgement.Of(
            Due is { } due ? Lies(came, due) : beliefs.SourceOf(new FactKey(part, Fact)) == Source.None,
            () => Said(came, beliefs, new FactKey(part, Fact)), () => Explanation.Why(outcome, $"{Part}.{Fact.Name}"));
    }

    private string Said(Value came, BeliefState beliefs, FactKey key) =>
        came.In(UnitSystem.Us) + (Reads == "value" ? beliefs.SourceOf(key) is var source and not Source.None ? $", {source.ToString().ToLowerInvariant()}" : ", not known" : "");

    // The grain of comparison is that of the packs: what differs by rounding alone is the same.
    private static bool Lies(Value came, Value due) => came.Type.IsQuantity
        ? Quantity.GreaterOrEqual(came.Quantity, At(due.Quantity.Low, due)) == Truth.Yes && Quantity.LessOrEqual(came.Quantity, At(due.Quantity.High, due)) == Truth.Yes
        : due.Contains(came);

    private static Quantity At(double bound, Value due) => double.IsFinite(bound) ? Quantity.Point(bound, due.Quantity.Dimension) : due.Quantity;
}
