using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Facts;

/// <summary>Judges whether a reading can be taken as it stands.</summary>
internal static class Plausibility
{
    /// <summary>Whether a value lies wholly outside what the fact's declaration says occurs.</summary>
    public static bool IsOutside(FactDefinition fact, Value value) =>
        fact.Plausible is { } range && Quantity.Intersect(range, value.Quantity) is null;

    /// <summary>The doubt about a reading, after a complaint; null where there is none.</summary>
    /// <param name="observation">The reading.</param>
    /// <param name="written">How it is written.</param>
    /// <param name="bag">Takes the complaint.</param>
    public static Doubt? Of(Observation observation, string written, DiagnosticBag bag)
    {
        var (key, value) = (observation.Fact, observation.Value);
        if (observation.IsSure || !IsOutside(key.Fact, value)) return null;
        var range = key.Fact.Plausible!.Value;
        var likely = UnitGuess.For(written, range);
        bag.Add(Messages.Implausible(observation.Span, written, key.ToString(), range.ToDisplay(UnitSystem.Us), likely?.Value, likely?.Meant, key.Fact.Span));
        return new Doubt(key, value, observation.Source, likely?.Value, observation.Note, observation.Span);
    }
}
