using ProcedureRules.Explaining;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>Words that every report of a plan puts alike.</summary>
internal static class PlanWords
{
    private const int MostNamed = 3;

    /// <summary>The jobs; of a vehicle sheet by itself, how to ask for one.</summary>
    public static string Jobs(Plan plan) => plan.Situation.Jobs.Count > 0
        ? string.Join("; ", plan.Situation.Jobs.Select(job => job.Title))
        : "No job is asked for: a work order names this sheet under 'vehicle', and what is to be done under 'jobs'.";

    /// <summary>How much it is: <c>46 steps, 5 h of labour; 11 questions open.</c></summary>
    public static string Extent(Plan plan, UnitSystem units)
    {
        var open = plan.Questions.Count(question => IsOpenNow(question) && question.After.Count == 0);
        var later = plan.Questions.Count(question => IsOpenNow(question) && question.After.Count > 0);
        return $"{plan.Steps.Count} steps, {plan.Labour.ToDisplay(units)} of labour"
            + (plan.Steps.Any(step => step.Waits.Count > 0) ? ", waits not counted" : "")
            + (open > 0 ? $"; {open} {(open == 1 ? "question" : "questions")} open" : "") + (later > 0 ? $", {later} more may follow" : "") + ".";
    }

    /// <summary>Whether a question is asked before the work begins.</summary>
    public static bool IsOpenNow(PlanQuestion question) => question.AtStep is null || question.Doubted is not null;

    /// <summary>The questions that are asked before the work begins, the first to ask first.</summary>
    public static IReadOnlyList<PlanQuestion> InTurn(Plan plan, IReadOnlyList<QuestionOutlook>? outlook) =>
        outlook is null ? [.. plan.Questions.Where(IsOpenNow).OrderBy(question => question.After.Count > 0)] : [.. outlook.Select(other => other.Question)];

    /// <summary>The heading of questions that wait for others.</summary>
    public const string LaterTitle = "Find out only if it is still open then";

    /// <summary>What a question waits for.</summary>
    public static string After(Plan plan, PlanQuestion question)
    {
        var before = question.After.Select(id => plan.Questions.FirstOrDefault(other => other.Id == id)).OfType<PlanQuestion>().ToList();
        var steps = before.Where(other => other.AtStep is not null).Select(other => plan.Steps.First(step => step.Id == other.AtStep).Number).Distinct().Order().ToList();
        var parts = before.Where(other => other.AtStep is null).Select(other => other.Id).Take(MostNamed).ToList();
        if (steps.Count > 0) parts.Insert(0, $"{(steps.Count == 1 ? "step" : "steps")} {string.Join(" and ", steps)}");
        return $"After {string.Join(", ", parts)}.";
    }

    /// <summary>The heading of a part of the work.</summary>
    public static string Title(Phase phase) => phase switch
    {
        Phase.Prepare => "Make ready",
        Phase.Check => "Look and measure",
        Phase.Apart => "Take apart",
        Phase.Work => "Do the work",
        Phase.Back => "Put back",
        _ => "Prove it",
    };

    /// <summary>A wait with its bounds and the step it counts from.</summary>
    public static string Wait(Plan plan, PlanWait wait, UnitSystem units)
    {
        var bounds = new[]
        {
            wait.Least is { } least ? $"at least {least.ToDisplay(units)}" : "",
            wait.Most is { } most ? $"at most {most.ToDisplay(units)}" : "",
        };
        var after = wait.AfterStep is { } id ? $" after step {plan.Steps.First(step => step.Id == id).Number}" : "";
        return $"{string.Join(", ", bounds.Where(bound => bound.Length > 0))}{after}: {wait.Text.In(units)}";
    }

    /// <summary>What is known of the limits of a check.</summary>
    public static string Verdict(PlanCheck check) => check.Verdict switch { Truth.Yes => "known to be so", Truth.No => "known NOT to be so", _ => "find out" };

    /// <summary>The verdict on a cause.</summary>
    public static string Verdict(PlanFinding finding) => finding.Verdict switch { Truth.Yes => "sure", Truth.No => "ruled out", _ => "possible" };

    /// <summary>Whether a cause is left only because nothing rules it out.</summary>
    public static bool IsUnlikely(PlanFinding finding) => finding is { Verdict: Truth.Unknown, For.Count: 0 };

    /// <summary>What an answer says of the causes.</summary>
    public static string Outcome(TellingAnswer answer, UnitSystem units)
    {
        var parts = new List<string>();
        if (answer.Confirms.Count > 0) parts.Add($"sure then: {string.Join("; ", answer.Confirms.Select(cause => cause.In(units)))}");
        if (answer.RulesOut.Count > 0) parts.Add($"rules out: {string.Join("; ", answer.RulesOut.Select(cause => cause.In(units)))}");
        return string.Join(". ", parts);
    }

    /// <summary>Statements that contradict each other.</summary>
    public static string Conflict(Beliefs.Conflict conflict, UnitSystem units) =>
        $"{conflict.About.Id}: {string.Join(" against ", conflict.Values.Select(value => value.In(units)))}. Measure again; until then the plan reckons with both.";

    /// <summary>What the jobs save together.</summary>
    public static string Saving(JobSharing sharing, UnitSystem units) =>
        $"Together: {sharing.Together.ToDisplay(units)}; saves about {sharing.Saving.ToDisplay(units)} of labour";

    /// <summary>A tool or supply, and whether it may be needed only.</summary>
    public static string Item(PlanItem item, UnitSystem units) => item.Text.In(units) + (item.IsSure ? "" : " (may be needed)");
}
