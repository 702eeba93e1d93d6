using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>Everything that a plan says, entry by entry.</summary>
public static class PlanContents
{
    /// <summary>The steps, the orders that bind two of them, and everything beside.</summary>
    public static IReadOnlyList<PlanEntry> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Steps.Select(Step), .. Orders(plan), .. Beside(plan)];
    }

    /// <summary>Everything beside the steps and their order.</summary>
    internal static IEnumerable<PlanEntry> Beside(Plan plan) =>
    [
        .. plan.Stops.Select(stop => Said(PlanItemSort.Stop, null, stop.IsSure ? stop.Text : new Wording(units => $"{stop.Text.In(units)} (possible)"), stop.Reason)),
        .. plan.Cautions.Select(caution => Caution(caution, null)),
        .. plan.Steps.SelectMany(At),
        .. plan.Holds.Select(hold => Hold(hold, null)),
        .. plan.Choices.Select(Choice),
        .. plan.Findings.Select(Finding),
        .. plan.TellingChecks.Select(check => Entry(PlanItemSort.TellingCheck, check.Id, null, check.Text, trees => trees.Of(check))),
        .. plan.Questions.Select(question => Entry(PlanItemSort.Question, question.Id, question.AtStep, question.Text, trees => trees.Of(question))),
        .. plan.Tools.Select(item => Item(PlanItemSort.Tool, item)),
        .. plan.Supplies.Select(item => Item(PlanItemSort.Supply, item)),
        .. plan.Offers.Select(item => Item(PlanItemSort.Offer, item)),
        .. plan.Assumptions.Select(item => Entry(PlanItemSort.Assumption, item.Text.ToString(), null, item.Text, trees => trees.OfAssumption(item))),
        .. plan.Conflicts.Select(conflict => Entry(PlanItemSort.Conflict, conflict.About.Id, null, Words.Conflict(conflict), trees => trees.Of(conflict))),
    ];

    internal static PlanEntry Step(PlanStep step) => Entry(PlanItemSort.Step, step.Id, step.Id, step.Text, trees => trees.Of(step));

    /// <summary>That one step comes before another.</summary>
    internal static PlanEntry Order(PlanStep first, PlanStep second) => Entry(
        PlanItemSort.Order, $"{first.Id} before {second.Id}", second.Id, new Wording(units => $"{first.Text.In(units)}; then: {second.Text.In(units)}"), trees => trees.OfOrder(first, second));

    /// <summary>A fact, what is known of it and what is demanded of it.</summary>
    internal static PlanEntry Figure(FactKey key) => Entry(
        PlanItemSort.Figure, key.ToString(), null, new Wording($"{key.Part.Text} {Words.Name(key.Fact.Name)}"), trees => trees.OfFigure(key));

    private static IEnumerable<PlanEntry> Orders(Plan plan)
    {
        var steps = plan.Steps.ToDictionary(step => step.Id);
        return plan.Steps.SelectMany(step => step.After.Select(before => Order(steps[before], step)));
    }

    private static IEnumerable<PlanEntry> At(PlanStep step) =>
    [
        .. step.Cautions.Select(caution => Caution(caution, step.Id)),
        .. step.Checks.Select(check => Said(PlanItemSort.Check, step.Id, check.Text, check.Reason)),
        .. step.Waits.Select(wait => Said(PlanItemSort.Wait, step.Id, wait.Text, wait.Reason)),
        .. step.Holds.Select(hold => Hold(hold, step.Id)),
        .. step.Detail.Select(detail => Entry(PlanItemSort.Detail, detail.ToString(), step.Id, detail, trees => trees.OfDetail(step, detail))),
    ];

    private static PlanEntry Caution(PlanCaution caution, string? step) =>
        Said(PlanItemSort.Caution, step, new Wording(units => $"{caution.Signal.ToString().ToUpperInvariant()}: {caution.Text.In(units)}"), caution.Reason);

    private static PlanEntry Hold(PlanHold hold, string? step) => Entry(PlanItemSort.Hold, hold.Text.ToString(), step, hold.Text, trees => trees.Of(hold));

    private static PlanEntry Choice(PlanChoice choice) =>
        Entry(PlanItemSort.Choice, choice.Text.ToString(), null, new Wording(units => $"{choice.Text.In(units)}: {choice.Ways[choice.Taken].Text.In(units)}"), trees => trees.Of(choice))
            with
        { Also = [.. choice.Ways.Select(way => way.Text)] };

    private static PlanEntry Finding(PlanFinding finding) => Entry(
        PlanItemSort.Finding, finding.Text.ToString(), null, new Wording(units => $"{finding.Text.In(units)}: {Verdict(finding.Verdict)}"), trees => trees.Of(finding));

    private static PlanEntry Item(PlanItemSort sort, PlanItem item) => item.Reason is { } reason
        ? Said(sort, null, item.Text, reason)
        : Entry(sort, item.Text.ToString(), null, item.Text, _ => []);

    private static PlanEntry Said(PlanItemSort sort, string? step, Wording text, Reason reason) =>
        Entry(sort, text.ToString(), step, text, trees => [trees.Of(reason.Record, sort)]);

    private static PlanEntry Entry(PlanItemSort sort, string id, string? step, Wording text, Func<ItemTrees, IEnumerable<WhyNode>> grounds) =>
        new(sort, id, step, text) { Grounds = grounds };

    private static string Verdict(Truth truth) => truth switch { Truth.Yes => "sure", Truth.No => "ruled out", _ => "possible" };
}
