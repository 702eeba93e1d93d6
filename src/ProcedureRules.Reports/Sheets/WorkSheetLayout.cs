using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports.Sheets;

/// <summary>Lays a plan out as a work sheet for the bay: nothing of it is told in one format and not in the other.</summary>
internal sealed class WorkSheetLayout
{
    private static readonly string[] Fields = ["Registration", "Distance run", "Date", "Done by"];

    private readonly Plan _plan;
    private readonly UnitSystem _units;
    private readonly List<SheetBlock> _blocks = [];

    private WorkSheetLayout(Plan plan, UnitSystem units) => (_plan, _units) = (plan, units);

    /// <summary>The sheet of a plan.</summary>
    public static WorkSheet Of(Plan plan, UnitSystem units, JobSharing? sharing, IReadOnlyList<QuestionOutlook>? outlook)
    {
        var layout = new WorkSheetLayout(plan, units);
        layout.Head(sharing);
        layout.Questions(outlook);
        layout.Findings();
        layout.Ready();
        layout.Ways();
        layout._blocks.AddRange(StepBlocks.Of(plan, units));
        layout.Foot();
        return new WorkSheet(PlanWords.Jobs(plan), plan.Situation.Title, Fields, layout._blocks);
    }

    private void Head(JobSharing? sharing)
    {
        _blocks.Add(new SheetBlock.Line(PlanWords.Extent(_plan, _units)));
        if (sharing is not null)
        {
            foreach (var job in sharing.Alone) _blocks.Add(new SheetBlock.Line($"{job.Job.Title}, by itself: {job.Labour.ToDisplay(_units)}"));
            _blocks.Add(new SheetBlock.Line(PlanWords.Saving(sharing, _units)));
        }

        foreach (var stop in _plan.Stops)
        {
            _blocks.Add(new SheetBlock.Halt(stop.IsSure ? "STOP" : "STOP?", stop.Text.In(_units)));
            _blocks.Add(new SheetBlock.Note(stop.Reason.Text.In(_units)));
        }

        foreach (var caution in _plan.Cautions.OrderByDescending(caution => caution.Signal)) _blocks.Add(new SheetBlock.Caution(caution.Signal, caution.Text.In(_units)));
        Section("Statements that contradict each other", _plan.Conflicts.Select(conflict => new SheetBlock.Blank(PlanWords.Conflict(conflict, _units), [])));
    }

    private void Questions(IReadOnlyList<QuestionOutlook>? outlook)
    {
        var ranked = PlanWords.InTurn(_plan, outlook);
        Section("Find out first", ranked.Where(question => question.After.Count == 0).Select(Block));
        Section(PlanWords.LaterTitle, ranked.Where(question => question.After.Count > 0).Select(Block));

        SheetBlock Block(PlanQuestion question) => QuestionBlock.Of(_plan, question, outlook?.FirstOrDefault(other => other.Question.Id == question.Id), _units);
    }

    private void Findings()
    {
        Section("What the findings say", _plan.Findings.Select(finding =>
            new SheetBlock.Line($"{finding.Text.In(_units)}: {(PlanWords.IsUnlikely(finding) ? "not ruled out, though nothing speaks for it" : PlanWords.Verdict(finding))}")));
        Section("What would tell them apart, the least work first", _plan.TellingChecks.Select(check => new SheetBlock.Blank(
            check.Text.In(_units) + (check.Labour.High > 0 ? $" ({check.Labour.ToDisplay(_units)})" : ""),
            [
                .. check.How is { } how ? [$"How: {how.In(_units)}"] : Array.Empty<string>(),
                .. check.Work.Select(work => $"Before it: {work.In(_units)}"),
                .. check.Answers.GroupBy(answer => PlanWords.Outcome(answer, _units))
                    .Select(outcome => $"If {string.Join(", or ", outcome.Select(answer => answer.Answer.In(_units)))}: {outcome.Key}"),
            ])));
    }

    private void Ready()
    {
        Section("Tools to have or borrow", _plan.Tools.Select(tool => new SheetBlock.Tick(PlanWords.Item(tool, _units))));
        Section("Supplies to have or order", _plan.Supplies.Select(supply => new SheetBlock.Tick(PlanWords.Item(supply, _units))));
    }

    // The same way often serves several wants: it is told once. What was not chosen is no matter for the bay.
    private void Ways()
    {
        Section("Ways chosen", _plan.Choices.DistinctBy(choice => choice.Ways[choice.Taken].Text.In(_units))
            .Select(choice => new SheetBlock.Line($"{choice.Text.In(_units)}: {choice.Ways[choice.Taken].Text.In(_units)}{(choice.IsFixed ? " (fixed by you)" : "")}")));
    }

    private void Foot()
    {
        Section("The plan holds until this is known", _plan.Holds.Select(hold => new SheetBlock.Blank(hold.Text.In(_units), [hold.Reason.Text.In(_units)])));
        Section("While it is open, if you like", _plan.Offers.Select(offer => new SheetBlock.Tick(offer.Text.In(_units))));
        Section("Rests on assumptions: look before you trust them", _plan.Assumptions.Select(assumption => new SheetBlock.Tick(assumption.Text.In(_units))));
        _blocks.Add(new SheetBlock.Note(SafetyNote.Text));
    }

    private void Section(string title, IEnumerable<SheetBlock> blocks)
    {
        var all = blocks.ToList();
        if (all.Count == 0) return;
        _blocks.Add(new SheetBlock.Heading(title));
        _blocks.AddRange(all);
    }
}
