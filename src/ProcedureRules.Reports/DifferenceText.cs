using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What changes from one plan to another, as text.</summary>
public static class DifferenceText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="difference">The difference.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(PlanDifference difference, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(difference);
        var writer = new ReportWriter(Math.Max(40, width));
        var (before, after) = (difference.Before, difference.After);
        if (difference.IsNothing)
        {
            writer.Write("", "Nothing changes in the plan.", Tone.Heading);
            return writer.Lines;
        }

        writer.Write("", $"{before.Steps.Count} steps, {before.Labour.ToDisplay(units)} of labour, would be {after.Steps.Count} steps, {after.Labour.ToDisplay(units)}.", Tone.Heading);
        Steps("Steps that come in", difference.StepsIn, units, writer);
        Steps("Steps that go", difference.StepsOut, units, writer);
        if (difference.StepsMoved.Count > 0)
        {
            writer.Heading("Steps at another turn");
            foreach (var moved in difference.StepsMoved)
                writer.Write($" {moved.Step.Number,3}. ", $"{moved.Step.Text.In(units)} (was {moved.NumberBefore})", Tone.Step);
        }

        if (difference.StepsChanged.Count > 0)
        {
            writer.Heading("Steps that are done otherwise");
            foreach (var changed in difference.StepsChanged) Changed(changed, units, writer);
        }

        Items("Comes in beside", difference.In, difference.StepsIn, after, units, writer);
        Items("Goes beside", difference.Out, difference.StepsOut, before, units, writer);
        return writer.Lines;
    }

    private static void Steps(string heading, IReadOnlyList<PlanStep> steps, UnitSystem units, ReportWriter writer)
    {
        if (steps.Count == 0) return;
        writer.Heading(heading);
        foreach (var step in steps) writer.Write($" {step.Number,3}. ", step.Text.In(units), Tone.Step);
    }

    private static void Changed(ChangedStep changed, UnitSystem units, ReportWriter writer)
    {
        var (before, after) = (changed.Before, changed.After);
        writer.WriteWithTail($" {after.Number,3}. ", after.Text.In(units), after.Time.ToDisplay(units), Tone.Step);
        if (before.Text.In(units) != after.Text.In(units)) writer.Write("      was: ", before.Text.In(units), Tone.Quiet);
        if (before.Time != after.Time) writer.Write("      was: ", before.Time.ToDisplay(units), Tone.Quiet);
        if (before.Provisional.Count > 0 != after.Provisional.Count > 0) writer.Write("      ", after.Provisional.Count > 0 ? "only if a check says so" : "no longer behind a check", Tone.Quiet);
    }

    // What stood at a step that comes or goes comes or goes with it.
    private static void Items(string heading, IReadOnlyList<PlanEntry> all, IReadOnlyList<PlanStep> steps, Plan plan, UnitSystem units, ReportWriter writer)
    {
        var with = steps.Select(step => step.Id).ToHashSet();
        var items = all.Where(item => item.Step is null || !with.Contains(item.Step)).ToList();
        if (items.Count == 0) return;
        writer.Heading(heading);
        foreach (var item in items)
        {
            var at = plan.Steps.FirstOrDefault(step => step.Id == item.Step) is { } step ? $" (step {step.Number})" : "";
            var sort = item.Sort == PlanItemSort.Caution ? "" : $"{item.Sort.ToString().ToLowerInvariant()}: ";
            writer.Write("  - ", $"{sort}{item.Text.In(units)}{at}", item.Sort is PlanItemSort.Stop or PlanItemSort.Caution ? Tone.Care : Tone.Plain);
        }
    }
}
