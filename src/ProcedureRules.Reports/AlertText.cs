using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What a technician must not miss: stops, cautions, statements that contradict each other.</summary>
internal static class AlertText
{
    public static void Stops(Plan plan, UnitSystem units, ReportWriter writer)
    {
        foreach (var stop in plan.Stops)
        {
            writer.Blank();
            writer.Write(stop.IsSure ? "STOP      " : "STOP?     ", stop.Text.In(units), Tone.Hazard);
            writer.Write("          ", Because(stop.Reason, units), Tone.Quiet);
        }
    }

    public static void Caution(PlanCaution caution, UnitSystem units, ReportWriter writer, string indent) =>
        writer.Write($"{indent}{caution.Signal.ToString().ToUpperInvariant()}: ", caution.Text.In(units),
            caution.Signal >= Signal.Warning ? Tone.Hazard : Tone.Care);

    public static void Conflicts(Plan plan, UnitSystem units, ReportWriter writer)
    {
        if (plan.Conflicts.Count == 0) return;
        writer.Heading("Statements that contradict each other");
        foreach (var conflict in plan.Conflicts)
            writer.Write("  ", PlanWords.Conflict(conflict, units), Tone.Question);
    }

    public static string Because(Reason reason, UnitSystem units) => $"{reason.Text.In(units)} [{reason.Rule}]";
}
