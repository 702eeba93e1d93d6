using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports.Sheets;

/// <summary>The steps of a work sheet, by phase and place.</summary>
internal sealed class StepBlocks(Plan plan, UnitSystem units)
{
    private readonly OpenConditions _open = new(plan, units);
    private readonly ILookup<string?, PlanQuestion> _asked = plan.Questions.ToLookup(question => question.AtStep);

    public static IEnumerable<SheetBlock> Of(Plan plan, UnitSystem units) => new StepBlocks(plan, units).All(plan);

    private IEnumerable<SheetBlock> All(Plan of)
    {
        if (_open.Legend.Count > 0) yield return new SheetBlock.Heading(OpenConditions.LegendTitle);
        foreach (var (letter, text) in _open.Legend) yield return new SheetBlock.Line($"{letter}: {text}");
        PlanStep? before = null;
        foreach (var step in of.Steps)
        {
            var isNewPhase = before?.Phase != step.Phase;
            if (isNewPhase) yield return new SheetBlock.Heading(PlanWords.Title(step.Phase));
            if (isNewPhase || before?.Step.Operation.Place != step.Step.Operation.Place) yield return new SheetBlock.Place(step.Step.Operation.Place.Replace('_', ' '));
            yield return Block(step);
            before = step;
        }
    }

    private SheetBlock.Step Block(PlanStep step) => new(
        step.Number,
        step.Text.In(units),
        (step.Step.Operation.Hands > 1 ? $"{step.Step.Operation.Hands} people, " : "") + step.Time.ToDisplay(units),
        [.. Before(step)],
        [.. After(step)]);

    private IEnumerable<SheetBlock> Before(PlanStep step)
    {
        foreach (var wait in step.Waits) yield return new SheetBlock.Halt("WAIT", PlanWords.Wait(plan, wait, units));
        foreach (var hold in step.Holds) yield return new SheetBlock.Halt("HOLD", hold.Text.In(units));
        foreach (var caution in step.Cautions.OrderByDescending(caution => caution.Signal)) yield return new SheetBlock.Caution(caution.Signal, caution.Text.In(units));
        if (_open.Of(step) is { } condition) yield return new SheetBlock.Condition(condition);
    }

    private IEnumerable<SheetBlock> After(PlanStep step)
    {
        foreach (var detail in step.Detail) yield return new SheetBlock.Line(detail.In(units));
        foreach (var check in step.Checks)
            yield return new SheetBlock.Blank(
                $"{(check.During ? "Watch" : "Check")}: {check.Text.In(units)}", check.Verdict == Truth.Unknown ? [] : [PlanWords.Verdict(check)]);
        foreach (var question in _asked[step.Id]) yield return QuestionBlock.Of(plan, question, null, units);
        // That it goes back on because it came off needs no line of its own.
        if (step.Because.FirstOrDefault(reason => reason.Record.Mechanism != Inference.Mechanism.Undo) is { } why) yield return new SheetBlock.Note(why.Text.In(units));
    }
}
