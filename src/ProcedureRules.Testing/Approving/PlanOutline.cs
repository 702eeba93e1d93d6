using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Approving;

/// <summary>
/// The whole of what a plan says, as text that a person can review: the steps in order with what hangs on them, each line with the rules that
/// stand behind it, and what is asked, found, chosen and worked out. Steps go by name and have no number, so that one more is one block more.
/// </summary>
internal sealed class PlanOutline
{
    private readonly Plan _plan;
    private readonly IReadOnlyDictionary<string, IReadOnlyList<string>> _nearest;

    private PlanOutline(Plan plan) => (_plan, _nearest) = (plan, NearestSteps.Of(plan));

    /// <summary>The blocks of a plan: the whole first, then the steps, then what stands beside them. Each is put into words as it is asked for.</summary>
    public static IEnumerable<OutlineBlock> Of(Plan plan)
    {
        var outline = new PlanOutline(plan);
        return from block in outline.Head().Concat(plan.Steps.Select(step => (Heading: $"step {step.Id}", Lines: outline.Lines(step)))).Concat(outline.Beside())
               let lines = block.Lines.Select(line => line.ReplaceLineEndings(" ").Trim()).Where(line => line.Length > 0).ToList()
               where lines.Count > 0
               select new OutlineBlock(block.Heading, lines);
    }

    /// <summary>Whether rules say what a fact is, and nobody else does.</summary>
    public static bool IsWorkedOut(BeliefState beliefs, FactKey key) =>
        beliefs.Observations(key).Count == 0 && beliefs.SettersOf(key).Any() && !beliefs.Fact(key.Part, key.Fact).Contains(Value.Unknown(key.Fact));

    private IEnumerable<(string Heading, IEnumerable<string> Lines)> Head()
    {
        yield return ("labour", [_plan.Labour.ToDisplay(UnitSystem.Us)]);
        yield return ("stops", _plan.Stops.Select(stop => $"{Sure(stop.IsSure)}{stop.Text} {By(stop.Reason)}"));
        yield return ("cautions", _plan.Cautions.Select(Line));
        yield return ("holds", _plan.Holds.Select(Line));
    }

    private IEnumerable<string> Lines(PlanStep step) =>
    [
        $"{step.Text} ({step.Time.ToDisplay(UnitSystem.Us)})",
        .. step.Provisional.Select(condition => $"only if {condition}"),
        .. step.Cautions.Select(Line),
        .. step.Holds.Select(Line),
        .. step.Waits.Select(wait => $"wait {Span(wait)}: {wait.Text} {By(wait.Reason)}"),
        .. step.Detail.Select(detail => $"detail: {detail}{OfDetail(step, detail)}"),
        .. step.Checks.Select(check => $"check{(check.During ? " meanwhile" : "")}, {Verdict(check.Verdict)}: {check.Text} {By(check.Reason)}"),
        .. _nearest[step.Id] is { Count: > 0 } nearest ? new[] { $"after {string.Join(", ", nearest)}" } : [],
        .. step.Because.Count > 0 ? new[] { $"because{By(step.Because)}" } : [],
    ];

    private IEnumerable<(string Heading, IEnumerable<string> Lines)> Beside()
    {
        yield return ("choices", _plan.Choices.Select(choice => $"{choice.Text}: {choice.Ways[choice.Taken].Text}{By(choice.Because)}"));
        yield return ("findings", _plan.Findings.Select(finding =>
            $"{Word(finding.Verdict)}: {finding.Text}{(finding.For.Count > 0 ? $" for{By(finding.For)}" : "")}{(finding.Against.Count > 0 ? $" against{By(finding.Against)}" : "")}"));
        yield return ("telling checks", _plan.TellingChecks.SelectMany(check => check.Answers.Select(answer =>
            $"{check.Text} {answer.Answer}: {string.Join("; ", answer.Confirms.Select(cause => $"for {cause}").Concat(answer.RulesOut.Select(cause => $"not {cause}")))}")));
        yield return ("questions", _plan.Questions.SelectMany(Lines));
        yield return ("tools", _plan.Tools.Select(Line));
        yield return ("supplies", _plan.Supplies.Select(Line));
        yield return ("offers", _plan.Offers.Select(Line));
        yield return ("assumptions", _plan.Assumptions.Select(item => item.Text.ToString()));
        yield return ("conflicts", _plan.Conflicts.Select(conflict => Words.Conflict(conflict).ToString()));
        yield return ("worked out", Values());
    }

    private static IEnumerable<string> Lines(PlanQuestion question)
    {
        yield return $"{question.Id}{(question.IsSafety ? " (safety)" : "")}: {question.Text}{(question.AtStep is { } step ? $" At {step}." : "")}";
        foreach (var matter in question.Matters) yield return $"> decides: {matter}";
        foreach (var before in question.After) yield return $"> once known: {before}";
        if (question.Doubted is { } doubted) yield return $"> doubted: {doubted}";
        if (question.Assumed is { } assumed) yield return $"> assumed: {assumed}";
    }

    // Figures that rules hold or demand; what was stated stands in the scenario.
    private IEnumerable<string> Values()
    {
        var (beliefs, nodes) = (_plan.Beliefs, _plan.Beliefs.Network.Graph.Nodes);
        foreach (var key in nodes.Facts.Where(key => IsWorkedOut(beliefs, key)).OrderBy(key => key.ToString(), StringComparer.Ordinal))
            yield return $"{key} = {beliefs.Fact(key.Part, key.Fact).In(UnitSystem.Us)}{By(beliefs.SettersOf(key).Select(record => record.Rule?.Title))}";
        foreach (var key in nodes.Demands.OrderBy(key => key.ToString(), StringComparer.Ordinal))
        {
            var by = By(beliefs.Network.RecordsWith<Conclusion.Demand>().Where(demand => demand.Effect.Fact == key && beliefs.Available(demand.Record, demand.Index) > Assurance.No)
                .Select(demand => demand.Record.Rule?.Title));
            if (by.Length > 0) yield return $"{key} at least {beliefs.Demanded(key.Part, key.Fact).ToDisplay(UnitSystem.Us)}, at most {beliefs.Allowed(key.Part, key.Fact).ToDisplay(UnitSystem.Us)}{by}";
        }
    }

    private string OfDetail(PlanStep step, Wording detail)
    {
        var (beliefs, words) = (_plan.Beliefs, detail.ToString());
        return By(beliefs.Network.RecordsAbout(step.Step).Where(source => source.Effect.Conclusion is Conclusion.Detail line
            && beliefs.Given(source.Record, source.Index, step.Step) > Assurance.Held && line.Text.Render(beliefs, source.Record.Binding, UnitSystem.Us) == words).Select(source => source.Record.Rule?.Title));
    }

    private static string Line(PlanCaution caution) => $"{caution.Signal.ToString().ToUpperInvariant()}: {caution.Text} {By(caution.Reason)}";

    private static string Line(PlanHold hold) => $"hold: {hold.Text} {By(hold.Reason)}";

    private static string Line(PlanItem item) => $"{Sure(item.IsSure)}{item.Text}{(item.Reason is { } reason ? $" {By(reason)}" : "")}{(item.Steps.Count == 0 ? "" : $" at {string.Join(", ", item.Steps)}")}";

    private static string Span(PlanWait wait) => string.Join(' ', new[]
    {
        wait.AfterStep is { } after ? $"after {after}" : "",
        wait.Least is { } least ? $"at least {least.ToDisplay(UnitSystem.Us)}" : "",
        wait.Most is { } most ? $"at most {most.ToDisplay(UnitSystem.Us)}" : "",
    }.Where(word => word.Length > 0));

    private static string Sure(bool isSure) => isSure ? "" : "perhaps: ";

    private static string By(Reason reason) => $"[{reason.Rule}]";

    private static string By(IEnumerable<Reason> reasons) => By(reasons.Select(reason => (string?)reason.Rule));

    private static string By(IEnumerable<string?> rules) => rules.OfType<string>().Distinct().Order(StringComparer.Ordinal).ToList() is { Count: > 0 } titles ? $" [{string.Join("; ", titles)}]" : "";

    private static string Verdict(Truth truth) => truth switch { Truth.Yes => "within", Truth.No => "outside", _ => "open" };

    private static string Word(Truth truth) => truth switch { Truth.Yes => "sure", Truth.No => "ruled out", _ => "possible" };
}
