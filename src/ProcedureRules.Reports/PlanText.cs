using ProcedureRules.Explaining;
using ProcedureRules.Inference;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>A plan as text for a technician: what is open first, then what to get ready, then the steps by phase.</summary>
public static class PlanText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    /// <param name="sharing">What several jobs save by being done together; null where that is not told.</param>
    /// <param name="outlook">What hangs on the questions, the first to ask first; null where that is not told.</param>
    public static IReadOnlyList<ReportLine> Lines(
        Plan plan, UnitSystem units, int width = 80, JobSharing? sharing = null, IReadOnlyList<QuestionOutlook>? outlook = null)
    {
        var writer = new ReportWriter(Math.Max(40, width));
        Head(plan, units, writer);
        if (sharing is not null) Sharing(sharing, units, writer);
        AlertText.Stops(plan, units, writer);
        AlertText.Conflicts(plan, units, writer);
        QuestionList.Write(plan, outlook, units, writer);
        FindingsText.Write(plan, units, writer);
        Ready(plan, units, writer);
        Choices(plan, units, writer);
        Steps(plan, units, writer);
        Holds(plan, units, writer);
        Offers(plan, units, writer);
        Assumptions(plan, units, writer);
        Foot(writer);
        return writer.Lines;
    }

    private static void Head(Plan plan, UnitSystem units, ReportWriter writer)
    {
        writer.Write("", PlanWords.Jobs(plan), Tone.Heading);
        writer.Write("", plan.Situation.Title);
        writer.Write("", PlanWords.Extent(plan, units));
        foreach (var caution in plan.Cautions) AlertText.Caution(caution, units, writer, "");
    }

    private static void Sharing(JobSharing sharing, UnitSystem units, ReportWriter writer)
    {
        writer.Heading("Done together");
        foreach (var job in sharing.Alone) writer.Write("  ", $"{job.Job.Title}, by itself: {job.Labour.ToDisplay(units)}");
        writer.Write("  ", PlanWords.Saving(sharing, units));
    }

    private static void Ready(Plan plan, UnitSystem units, ReportWriter writer)
    {
        if (plan.Tools.Count > 0)
        {
            writer.Heading("Tools to have");
            foreach (var tool in plan.Tools) Item(tool, units, writer);
        }
        if (plan.Supplies.Count > 0)
        {
            writer.Heading("Supplies to order or have");
            foreach (var supply in plan.Supplies) Item(supply, units, writer);
        }
    }

    private static void Item(PlanItem item, UnitSystem units, ReportWriter writer) =>
        writer.Write("  - ", PlanWords.Item(item, units));

    private static void Choices(Plan plan, UnitSystem units, ReportWriter writer)
    {
        if (plan.Choices.Count == 0) return;
        writer.Heading("Ways chosen");
        // The same way often serves several wants: it is told once.
        foreach (var choice in plan.Choices.DistinctBy(choice => choice.Ways[choice.Taken].Text.In(units)))
        {
            writer.Write("  ", $"{choice.Text.In(units)}: {choice.Ways[choice.Taken].Text.In(units)}{(choice.IsFixed ? " (fixed by you)" : "")}");
            foreach (var way in choice.Ways)
                if (way.WhyNot is { } whyNot) writer.Write("      not: ", $"{way.Text.In(units)} ({whyNot.In(units)})", Tone.Quiet);
            var others = choice.Ways.Where(way => way.Labour is not null && way.WhyNot is not null).Select(way => way.Id).ToList();
            if (others.Count > 0) writer.Write("      ", $"Another way: --choose {choice.Id}={string.Join(" or ", others)}", Tone.Quiet);
        }
        if (plan.ChoicesBound is { } bound)
            writer.Write("  ", $"The best ways found within the bounds of the search; no others take less than {bound.ToDisplay(units)} of likely labour.", Tone.Care);
    }

    private static void Steps(Plan plan, UnitSystem units, ReportWriter writer)
    {
        var open = new OpenConditions(plan, units);
        open.WriteLegend(writer);
        Phase? phase = null;
        string? place = null;
        foreach (var step in plan.Steps)
        {
            if (step.Phase != phase)
            {
                phase = step.Phase;
                place = null;
                writer.Heading(PlanWords.Title(step.Phase));
            }
            if (step.Step.Operation.Place != place)
            {
                place = step.Step.Operation.Place;
                writer.Write("", $"[{place.Replace('_', ' ')}]", Tone.Quiet);
            }
            Step(plan, step, open, units, writer);
        }
    }

    private static void Step(Plan plan, PlanStep step, OpenConditions open, UnitSystem units, ReportWriter writer)
    {
        foreach (var wait in step.Waits) writer.Write("      WAIT ", PlanWords.Wait(plan, wait, units), Tone.Question);
        foreach (var hold in step.Holds) writer.Write("      HOLD ", hold.Text.In(units), Tone.Question);
        foreach (var caution in step.Cautions.OrderByDescending(caution => caution.Signal)) AlertText.Caution(caution, units, writer, "      ");
        var hands = step.Step.Operation.Hands > 1 ? $"{step.Step.Operation.Hands} people, " : "";
        writer.WriteWithTail($" {step.Number,3}. ", step.Text.In(units), hands + step.Time.ToDisplay(units), Tone.Step);
        if (open.Of(step) is { } condition) writer.Write("      ", condition, Tone.Question);
        foreach (var detail in step.Detail) writer.Write("      - ", detail.In(units));
        foreach (var check in step.Checks)
        {
            writer.Write(check.During ? "      Watch: " : "      Check: ", $"{check.Text.In(units)} [{PlanWords.Verdict(check)}]", check.Verdict == Truth.No ? Tone.Hazard : Tone.Question);
        }
        // That it goes back on because it came off needs no line of its own.
        if (step.Because.FirstOrDefault(reason => reason.Record.Mechanism != Mechanism.Undo) is { } why)
            writer.Write("      Why: ", AlertText.Because(why, units), Tone.Quiet);
    }

    private static void Holds(Plan plan, UnitSystem units, ReportWriter writer)
    {
        if (plan.Holds.Count == 0) return;
        writer.Heading("The plan holds until this is known");
        foreach (var hold in plan.Holds)
        {
            writer.Write("  - ", hold.Text.In(units), Tone.Question);
            writer.Write("    ", AlertText.Because(hold.Reason, units), Tone.Quiet);
        }
    }

    private static void Offers(Plan plan, UnitSystem units, ReportWriter writer)
    {
        if (plan.Offers.Count == 0) return;
        writer.Heading("While it is open, if you like");
        foreach (var offer in plan.Offers) writer.Write("  - ", offer.Text.In(units));
    }

    private static void Assumptions(Plan plan, UnitSystem units, ReportWriter writer)
    {
        if (plan.Assumptions.Count == 0) return;
        writer.Heading("Rests on assumptions: look before you trust them");
        foreach (var assumption in plan.Assumptions) writer.Write("  - ", assumption.Text.In(units));
    }

    private static void Foot(ReportWriter writer)
    {
        writer.Blank();
        writer.Write("", SafetyNote.Text, Tone.Quiet);
    }
}
