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
    public static IReadOnlyList<ReportLine> Lines(Plan plan, UnitSystem units, int width = 80, JobSharing? sharing = null)
    {
        var writer = new ReportWriter(Math.Max(40, width));
        Head(plan, units, writer);
        if (sharing is not null) Sharing(sharing, units, writer);
        AlertText.Stops(plan, units, writer);
        AlertText.Conflicts(plan, units, writer);
        Questions(plan, units, writer);
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
        writer.Write("", string.Join("; ", plan.Situation.Jobs.Select(JobTitle.Of)), Tone.Heading);
        writer.Write("", plan.Situation.Title);
        var open = plan.Questions.Count(question => question.AtStep is null || question.Doubted is not null);
        writer.Write("", $"{plan.Steps.Count} steps, {plan.Labour.ToDisplay(units)} of labour"
            + (plan.Steps.Any(step => step.Waits.Count > 0) ? ", waits not counted" : "")
            + (open > 0 ? $"; {open} {(open == 1 ? "question" : "questions")} open" : "") + ".");
        foreach (var caution in plan.Cautions) AlertText.Caution(caution, units, writer, "");
    }

    private static void Sharing(JobSharing sharing, UnitSystem units, ReportWriter writer)
    {
        writer.Heading("Done together");
        foreach (var job in sharing.Alone) writer.Write("  ", $"{JobTitle.Of(job.Job)}, by itself: {job.Labour.ToDisplay(units)}");
        writer.Write("  ", $"Together: {sharing.Together.ToDisplay(units)}; saves about {sharing.Saving.ToDisplay(units)} of labour");
    }

    private static void Questions(Plan plan, UnitSystem units, ReportWriter writer)
    {
        var now = plan.Questions.Where(question => question.AtStep is null || question.Doubted is not null).ToList();
        if (now.Count == 0) return;
        writer.Heading("Find out first");
        var number = 0;
        foreach (var question in now)
        {
            writer.Write($"  {++number,2}. ", question.Text.In(units), Tone.Question);
            if (question.Doubted is { } doubted) writer.Write("      ", doubted.In(units), Tone.Care);
            if (question.Assumed is { } assumed) writer.Write("      ", $"Assumed meanwhile: {assumed.In(units)}", Tone.Plain);
            if (question.How is { } how) writer.Write("      ", $"How: {how.In(units)}");
            foreach (var matters in question.Matters.Take(2)) writer.Write("      ", $"Decides: {matters.In(units)}", Tone.Quiet);
            var sure = question.Doubted is null ? "" : $"; \"{question.Id}=sure ...\" for a value outside what occurs";
            writer.Write("      ", $"Answer with --set \"{question.Id}=...\"{sure}", Tone.Quiet);
        }
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
        writer.Write("  - ", item.Text.In(units) + (item.IsSure ? "" : " (may be needed)"));

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
                writer.Heading(Title(step.Phase));
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
        foreach (var wait in step.Waits)
        {
            var least = wait.Least is { } l ? $"at least {l.ToDisplay(units)}" : "";
            var most = wait.Most is { } m ? $"at most {m.ToDisplay(units)}" : "";
            var after = wait.AfterStep is { } id ? $" after step {plan.Steps.First(s => s.Id == id).Number}" : "";
            writer.Write("      WAIT ", $"{string.Join(", ", new[] { least, most }.Where(t => t.Length > 0))}{after}: {wait.Text.In(units)}", Tone.Question);
        }
        foreach (var hold in step.Holds) writer.Write("      HOLD ", hold.Text.In(units), Tone.Question);
        foreach (var caution in step.Cautions.OrderByDescending(caution => caution.Signal)) AlertText.Caution(caution, units, writer, "      ");
        var hands = step.Step.Operation.Hands > 1 ? $"{step.Step.Operation.Hands} people, " : "";
        writer.WriteWithTail($" {step.Number,3}. ", step.Text.In(units), hands + step.Time.ToDisplay(units), Tone.Step);
        open.Write(step, writer);
        foreach (var detail in step.Detail) writer.Write("      - ", detail.In(units));
        foreach (var check in step.Checks)
        {
            var verdict = check.Verdict switch { Truth.Yes => "known to be within", Truth.No => "known NOT to be within", _ => "measure it" };
            writer.Write(check.During ? "      Watch: " : "      Check: ", $"{check.Text.In(units)} [{verdict}]", check.Verdict == Truth.No ? Tone.Hazard : Tone.Question);
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

    private static string Title(Phase phase) => phase switch
    {
        Phase.Prepare => "Make ready",
        Phase.Check => "Look and measure",
        Phase.Apart => "Take apart",
        Phase.Work => "Do the work",
        Phase.Back => "Put back",
        _ => "Prove it",
    };
}
