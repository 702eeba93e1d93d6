using System.Globalization;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Reports;

/// <summary>A schedule as text for a shop: what to get ready by when, the steps by day and time, and what decides on the finish.</summary>
public static class ScheduleText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(Schedule schedule, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        var writer = new ReportWriter(Math.Max(40, width));
        Head(schedule, units, writer);
        foreach (var caution in schedule.Plan.Cautions) AlertText.Caution(caution, units, writer, "");
        AlertText.Stops(schedule.Plan, units, writer);
        Unkept(schedule, units, writer);
        Preparations(schedule, units, writer);
        Steps(schedule, units, writer);
        Chain(schedule, units, writer);
        writer.Blank();
        writer.Write("", SafetyNote.Text, Tone.Quiet);
        return writer.Lines;
    }

    private static void Head(Schedule schedule, UnitSystem units, ReportWriter writer)
    {
        var shop = schedule.Shop;
        writer.Write("", PlanWords.Jobs(schedule.Plan), Tone.Heading);
        writer.Write("", schedule.Plan.Situation.Title);
        writer.Write("", $"{shop.Title}: {shop.Technicians} {(shop.Technicians == 1 ? "technician" : "technicians")}.");
        if (schedule.Steps.Count == 0) return;
        writer.Blank();
        writer.Write("Begins   ", Moment(schedule.Start));
        writer.Write("Is done  ", $"{Moment(schedule.Finish)}, if all goes as is likely", Tone.Step);
        writer.Write("Elapsed  ", $"{Estimated(schedule.Elapsed, units)}; nights and closed hours count");
        writer.Write("Labour   ", Estimated(schedule.Labour, units));
        if (schedule.Idle > TimeSpan.Zero) writer.Write("Idle     ", $"{Duration(schedule.Idle, units)} of open hours in which all wait");
        var open = schedule.Plan.Questions.Count;
        if (open > 0) writer.Write("Open     ", $"{open} {(open == 1 ? "question" : "questions")}: an answer may change the plan, and the times with it", Tone.Question);
    }

    private static void Unkept(Schedule schedule, UnitSystem units, ReportWriter writer)
    {
        foreach (var unkept in schedule.UnkeptWaits)
            writer.Write("! ", $"Step {NumberOf(schedule, unkept.StepId)} comes {Duration(unkept.Over, units)} too late: {unkept.Wait.Text.In(units)}", Tone.Hazard);
    }

    // The day is what a supplier asks for; the minute stands in the JSON.
    private static void Preparations(Schedule schedule, UnitSystem units, ReportWriter writer)
    {
        if (schedule.Preparations.Count == 0) return;
        writer.Heading("Order, borrow or arrange before starting");
        foreach (var group in schedule.Preparations.GroupBy(preparation => (preparation.By.Date, preparation.Kind)))
        {
            writer.Write("  ", $"{Title(group.Key.Kind)}, for {Day(group.Key.Date)}");
            foreach (var preparation in group) writer.Write("    - ", preparation.Text.In(units) + (preparation.IsSure ? "" : " (may be needed)"));
        }
    }

    private static void Steps(Schedule schedule, UnitSystem units, ReportWriter writer)
    {
        DateOnly? day = null;
        foreach (var step in schedule.Steps)
        {
            if (DateOnly.FromDateTime(step.Start) is var date && date != day)
            {
                day = date;
                writer.Heading(date.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture));
            }
            Step(schedule, step, units, writer);
        }
    }

    private static void Step(Schedule schedule, ScheduledStep step, UnitSystem units, ReportWriter writer)
    {
        var lead = $"{(step.IsCritical ? '*' : ' ')} {step.Start:HH:mm}-{step.End:HH:mm} {step.Step.Number,3}. ";
        var indent = new string(' ', lead.Length);
        foreach (var wait in step.Step.Waits) writer.Write($"{indent}WAIT ", $"{Bounds(schedule, step, wait, units)}: {wait.Text.In(units)}", Tone.Question);
        foreach (var hold in step.Step.Holds) writer.Write($"{indent}HOLD ", hold.Text.In(units), Tone.Question);
        foreach (var caution in step.Step.Cautions.OrderByDescending(caution => caution.Signal)) AlertText.Caution(caution, units, writer, indent);
        if (Who(schedule, step) is { Length: > 0 } who) writer.WriteWithTail(lead, step.Step.Text.In(units), who, Tone.Step);
        else writer.Write(lead, step.Step.Text.In(units), Tone.Step);
        if (step.Step.Provisional.Count > 0) writer.Write(indent, "Only if a check says so.", Tone.Quiet);
        if (step.IsAlone) writer.Write(indent, "Nobody else works on the vehicle meanwhile.", Tone.Care);
        if (step.IsSplit) writer.Write(indent, $"Goes on over closing time, until {Moment(step.End)}.", Tone.Care);
    }

    private static string Bounds(Schedule schedule, ScheduledStep step, PlanWait wait, UnitSystem units)
    {
        var bounds = new List<string>();
        if (wait.Least is not null && step.WaitOver is { } over) bounds.Add($"until {Moment(over)}");
        if (wait is { Most: { } most, AfterStep: { } after }) bounds.Add($"at most {most.ToDisplay(units)} after step {NumberOf(schedule, after)}");
        return bounds.Count > 0 ? string.Join(", ", bounds) : "mind the time";
    }

    private static string Who(Schedule schedule, ScheduledStep step)
    {
        var who = schedule.Shop.Technicians == 1 ? "" : string.Join("+", step.Technicians.Select(technician => $"T{technician}"));
        return who + (step.Helpers == 0 ? "" : $"{(who.Length > 0 ? "+" : "with ")}{step.Helpers} {(step.Helpers == 1 ? "helper" : "helpers")}");
    }

    // Where one step simply follows the other, the number is enough; what else puts a step off is said.
    private static void Chain(Schedule schedule, UnitSystem units, ReportWriter writer)
    {
        if (schedule.CriticalChain.Count == 0) return;
        writer.Heading("Critical chain (*)");
        writer.Write("  ", "What is late here is late at the end.");
        var run = new List<string>();
        foreach (var link in schedule.CriticalChain)
        {
            var step = schedule.Plan.Steps.First(step => step.Id == link.StepId);
            if (link.Cause == ChainCause.Order)
            {
                run.Add($"then {step.Number}");
                continue;
            }
            Flush();
            writer.Write($"  {step.Number,3}. ", $"{step.Text.In(units)} ({Cause(link.Cause)})");
        }
        Flush();

        void Flush()
        {
            if (run.Count > 0) writer.Write("       ", string.Join(", ", run), Tone.Quiet);
            run.Clear();
        }
    }

    private static string Cause(ChainCause cause) => cause switch
    {
        ChainCause.Begin => "the job begins with it",
        ChainCause.Wait => "after a wait",
        ChainCause.Technicians => "when a technician is free",
        ChainCause.Place => "when the place is free",
        _ => "when the shop opens again",
    };

    private static string Title(PreparationKind kind) => kind switch
    {
        PreparationKind.Supply => "Supplies",
        PreparationKind.Tool => "Tools",
        _ => "Help",
    };

    private static int NumberOf(Schedule schedule, string id) => schedule.Plan.Steps.First(step => step.Id == id).Number;

    private static string Moment(DateTime moment) => moment.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    private static string Estimated(Estimate estimate, UnitSystem units) =>
        $"{Duration(estimate.Likely, units)} likely, {Duration(estimate.Low, units)} at least, {Duration(estimate.High, units)} at most";

    private static string Day(DateTime moment) => moment.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    // Nobody plans by the second, and a fraction of a day says little.
    private static string Duration(TimeSpan span, UnitSystem units)
    {
        var rest = Quantity.Point(Math.Round(span.TotalMinutes % (24 * 60)) * 60, Dimension.Duration).ToDisplay(units);
        return span.Days > 0 ? $"{span.Days} d {rest}" : rest;
    }
}
