using ProcedureRules.Logic;
using ProcedureRules.Planning;

namespace ProcedureRules.Explaining;

/// <summary>Something of a plan beside its steps, as it is compared with another plan's.</summary>
/// <param name="Sort">What it is.</param>
/// <param name="Step">The id of the step it stands at; null where it is about the whole.</param>
/// <param name="Text">Its words.</param>
public sealed record ChangedItem(PlanItemSort Sort, string? Step, string Text)
{
    /// <summary>Everything of a plan beside its steps.</summary>
    internal static IReadOnlyList<ChangedItem> Of(Plan plan) =>
    [
        .. plan.Stops.Select(stop => new ChangedItem(PlanItemSort.Stop, null, $"{stop.Text}{(stop.IsSure ? "" : " (possible)")}")),
        .. plan.Cautions.Select(caution => Caution(caution, null)),
        .. plan.Steps.SelectMany(step => step.Cautions.Select(caution => Caution(caution, step.Id))),
        .. plan.Steps.SelectMany(step => step.Checks.Select(check => new ChangedItem(PlanItemSort.Check, step.Id, check.Text.ToString()))),
        .. plan.Steps.SelectMany(step => step.Waits.Select(wait => new ChangedItem(PlanItemSort.Wait, step.Id, wait.Text.ToString()))),
        .. plan.Steps.SelectMany(step => step.Holds.Select(hold => new ChangedItem(PlanItemSort.Hold, step.Id, hold.Text.ToString()))),
        .. plan.Steps.SelectMany(step => step.Detail.Select(detail => new ChangedItem(PlanItemSort.Detail, step.Id, detail.ToString()))),
        .. plan.Holds.Select(hold => new ChangedItem(PlanItemSort.Hold, null, hold.Text.ToString())),
        .. plan.Choices.Select(choice => new ChangedItem(PlanItemSort.Choice, null, $"{choice.Text}: {choice.Ways[choice.Taken].Text}")),
        .. plan.Findings.Select(finding => new ChangedItem(PlanItemSort.Finding, null, $"{finding.Text}: {Verdict(finding.Verdict)}")),
        .. plan.Questions.Select(question => new ChangedItem(PlanItemSort.Question, question.AtStep, question.Text.ToString())),
        .. plan.Tools.Select(tool => new ChangedItem(PlanItemSort.Tool, null, tool.Text.ToString())),
        .. plan.Supplies.Select(supply => new ChangedItem(PlanItemSort.Supply, null, supply.Text.ToString())),
        .. plan.Offers.Select(offer => new ChangedItem(PlanItemSort.Offer, null, offer.Text.ToString())),
    ];

    private static ChangedItem Caution(PlanCaution caution, string? step) =>
        new(PlanItemSort.Caution, step, $"{caution.Signal.ToString().ToUpperInvariant()}: {caution.Text}");

    private static string Verdict(Truth truth) => truth switch { Truth.Yes => "sure", Truth.No => "ruled out", _ => "possible" };
}
