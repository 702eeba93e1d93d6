using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Expectations;

/// <summary>Words of a plan, with the step they stand at and what is said of them.</summary>
/// <param name="Words">The words.</param>
/// <param name="Step">The step; null where they are about the whole.</param>
/// <param name="Is">The word that <c>is</c> compares; null where there is none.</param>
internal sealed record PlanWords(string Words, PlanStep? Step, string? Is)
{
    /// <summary>The texts of a plan that a keyword means.</summary>
    public static IEnumerable<PlanWords> Of(Plan plan, string keyword) => keyword switch
    {
        "check" => AtSteps(plan, step => step.Checks.Select(check => new PlanWords(check.Text.ToString(), step, Verdict(check.Verdict)))),
        "wait" => AtSteps(plan, step => step.Waits.Select(wait => new PlanWords(wait.Text.ToString(), step, null))),
        "detail" => AtSteps(plan, step => step.Detail.Select(detail => new PlanWords(detail.ToString(), step, null))),
        "hold" => AtSteps(plan, step => step.Holds.Select(hold => new PlanWords(hold.Text.ToString(), step, null)))
            .Concat(plan.Holds.Select(hold => new PlanWords(hold.Text.ToString(), null, null))),
        "tool" => Items(plan.Tools),
        "supply" => Items(plan.Supplies),
        "offer" => Items(plan.Offers),
        "assumption" => Items(plan.Assumptions),
        "stop" => plan.Stops.Select(stop => new PlanWords(stop.Text.ToString(), null, stop.IsSure ? "sure" : "possible")),
        "way" => plan.Choices.Select(choice => new PlanWords(choice.Ways[choice.Taken].Text.ToString(), null, null)),
        _ => plan.Cautions.Select(caution => (caution, Step: (PlanStep?)null))
            .Concat(plan.Steps.SelectMany(step => step.Cautions.Select(caution => (caution, Step: (PlanStep?)step))))
            .Where(entry => Word(entry.caution.Signal) == keyword).Select(entry => new PlanWords(entry.caution.Text.ToString(), entry.Step, null)),
    };

    /// <summary>The keyword of a signal word.</summary>
    public static string Word(Signal signal) => signal switch { Signal.Danger => "danger", Signal.Warning => "warning", Signal.Caution => "caution", _ => "notice" };

    private static IEnumerable<PlanWords> AtSteps(Plan plan, Func<PlanStep, IEnumerable<PlanWords>> texts) => plan.Steps.SelectMany(texts);

    private static IEnumerable<PlanWords> Items(IReadOnlyList<PlanItem> items) => items.Select(item => new PlanWords(item.Text.ToString(), null, null));

    private static string Verdict(Truth truth) => truth switch { Truth.Yes => "within", Truth.No => "outside", _ => "open" };
}
