using ProcedureRules.Beliefs;
using ProcedureRules.Explaining;
using ProcedureRules.Facts;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What readings come to: what is read, what rules and functions work out from it and on what basis, what it can mean.</summary>
public static class ReadingsText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="plan">The plan, for its findings and what contradicts itself.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(BeliefState beliefs, Plan plan, UnitSystem units, int width = 80)
    {
        var writer = new ReportWriter(Math.Max(40, width));
        writer.Write("", plan.Situation.Title, Tone.Heading);
        AlertText.Stops(plan, units, writer);
        foreach (var caution in plan.Cautions) AlertText.Caution(caution, units, writer, "");
        Readings(plan.Situation, units, writer);
        AlertText.Conflicts(plan, units, writer);
        Derived(beliefs, units, writer);
        FindingsText.Write(plan, units, writer, withBasis: true);
        return writer.Lines;
    }

    private static void Readings(Situation situation, UnitSystem units, ReportWriter writer)
    {
        var readings = situation.Observations.Where(observation => observation.Source >= Source.Stated).ToList();
        if (readings.Count == 0) return;
        writer.Heading("What was read or stated");
        foreach (var reading in readings)
            writer.Write("  ", $"{reading.Fact}: {reading.Value.In(units)}" + (reading.Source == Source.Measured ? ", measured" : ""));
    }

    private static void Derived(BeliefState beliefs, UnitSystem units, ReportWriter writer)
    {
        var derived = DerivedFact.Of(beliefs);
        if (derived.Count == 0) return;
        writer.Heading("What follows from it");
        foreach (var fact in derived)
        {
            writer.Write("  ", $"{fact.Key}: {fact.Value.In(units)}" + (fact.Rank is Source.Assumed or Source.Estimated ? $" ({fact.Rank.ToString().ToLowerInvariant()})" : ""));
            foreach (var reason in fact.Because) writer.Write("      ", $"{reason.Text.In(units)} [{reason.Basis}]", Tone.Quiet);
        }
    }
}
