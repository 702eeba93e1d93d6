using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What is known of a vehicle, from where, and what is open.</summary>
public static class FactsText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="situation">What is stated.</param>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="plan">The plan, whose questions are what is open and matters; null where there is none.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(Situation situation, BeliefState beliefs, Plan? plan, UnitSystem units, int width = 80)
    {
        var writer = new ReportWriter(Math.Max(40, width));
        writer.Write("", situation.Title, Tone.Heading);
        Parts(situation, beliefs, writer);
        States(situation, writer);
        Relations(situation, beliefs, writer);
        Facts(situation, beliefs, units, writer);
        Open(plan, units, writer);
        return writer.Lines;
    }

    private static void Parts(Situation situation, BeliefState beliefs, ReportWriter writer)
    {
        writer.Heading("Parts");
        foreach (var part in situation.Parts)
        {
            var source = situation.PartStatements.Where(statement => statement.Part == part).Select(statement => statement.Source).DefaultIfEmpty(Source.None).Max();
            var kind = part.Kind.Name == part.Name ? "" : $" ({part.Kind.Text})";
            writer.Write("  ", $"{part.Name}{kind}: {Word(beliefs.Exists(part))}, {Words(source)}");
        }
    }

    private static void States(Situation situation, ReportWriter writer)
    {
        if (situation.States.Count == 0) return;
        writer.Heading("Not as usual on arrival");
        foreach (var ((part, aspect), state) in situation.States)
            writer.Write("  ", $"{part.Name}.{aspect.Name}: {aspect.States[state]}");
    }

    private static void Relations(Situation situation, BeliefState beliefs, ReportWriter writer)
    {
        if (situation.Relations.Count == 0) return;
        writer.Heading("How parts stand to each other");
        foreach (var group in situation.Relations.GroupBy(statement => (statement.Relation, statement.A, statement.B)))
        {
            var (relation, a, b) = group.Key;
            writer.Write("  ", $"{relation.Name}({a.Name}, {b.Name}): {Word(beliefs.Related(relation, a, b))}, {Words(group.Max(statement => statement.Source))}");
        }
    }

    private static void Facts(Situation situation, BeliefState beliefs, UnitSystem units, ReportWriter writer)
    {
        if (situation.Observations.Count + situation.Doubts.Count == 0) return;
        writer.Heading("Facts");
        foreach (var doubt in situation.Doubts)
            writer.Write("  ", $"{doubt.Fact}: {doubt.Value.In(units)}, {Words(doubt.Source)} and not used: outside what occurs", Tone.Care);
        foreach (var key in situation.Observations.Select(observation => observation.Fact).Distinct())
            writer.Write("  ", $"{key}: {beliefs.Fact(key.Part, key.Fact).In(units)}, {Words(beliefs.SourceOf(key))}");
    }

    private static void Open(Plan? plan, UnitSystem units, ReportWriter writer)
    {
        if (plan is null || plan.Questions.Count == 0) return;
        writer.Heading("Open, and it matters");
        foreach (var question in plan.Questions)
            writer.Write("  ", $"{question.Id}: {question.Text.In(units)}" + (question.AtStep is { } step ? $" (found out at {step})" : ""), Tone.Question);
    }

    private static string Word(Truth truth) => truth switch { Truth.Yes => "yes", Truth.No => "no", _ => "not known" };

    private static string Words(Source source) => source == Source.None ? "not stated" : source.ToString().ToLowerInvariant();
}
