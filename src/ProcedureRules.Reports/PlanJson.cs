using System.Text.Json;
using ProcedureRules.Explaining;
using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>A plan as JSON, in the form that <c>rules/schema/plan.schema.json</c> describes.</summary>
public static class PlanJson
{
    /// <summary>The JSON text.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units of figures inside texts; minutes are numbers in either.</param>
    /// <param name="sharing">What several jobs save by being done together; null where that is not told.</param>
    /// <param name="outlook">What hangs on the questions, the first to ask first; null where that is not told.</param>
    public static string Write(Plan plan, UnitSystem units, JobSharing? sharing = null, IReadOnlyList<QuestionOutlook>? outlook = null)
    {
        return JsonText.Object(json =>
        {
            json.WriteString("vehicle", plan.Situation.Title);
            json.Array("jobs", plan.Situation.Jobs, job =>
            {
                json.WriteString("job", job.Job.Name);
                json.WriteString("on", job.On.Name);
                json.WriteString("text", job.Title);
            });
            json.Minutes("labour", plan.Labour);
            if (sharing is not null) Sharing(json, sharing);
            json.Array("cautions", plan.Cautions, caution => Caution(json, caution, units));
            json.Array("steps", plan.Steps, step => Step(json, step, units));
            var known = outlook?.ToDictionary(other => other.Question.Id);
            json.Array("questions", PlanWords.InTurn(plan, outlook).Concat(plan.Questions.Where(question => !PlanWords.IsOpenNow(question))), question =>
                Question(json, question, known?.GetValueOrDefault(question.Id), units));
            json.Array("findings", plan.Findings, finding => Finding(json, finding, units));
            json.Array("tellingChecks", plan.TellingChecks, check => TellingCheck(json, check, units));
            json.Array("conflicts", plan.Conflicts, conflict =>
            {
                json.WriteString("fact", conflict.About.Id);
                json.Texts("values", conflict.Values.Select(value => value.In(units)));
            });
            json.Array("stops", plan.Stops, stop =>
            {
                json.WriteString("text", stop.Text.In(units));
                json.WriteBoolean("sure", stop.IsSure);
                Reason(json, "because", stop.Reason, units);
            });
            json.Array("holds", plan.Holds, hold => Hold(json, hold, units));
            json.Array("choices", plan.Choices, choice => Choice(json, choice, units));
            if (plan.ChoicesBound is { } bound) json.WriteNumber("choicesBoundMinutes", JsonText.Minutes(bound.Low));
            json.Array("supplies", plan.Supplies, item => Item(json, item, units));
            json.Array("tools", plan.Tools, item => Item(json, item, units));
            json.Array("offers", plan.Offers, item => Item(json, item, units));
            json.Array("assumptions", plan.Assumptions, item => Item(json, item, units));
        });
    }

    private static void Step(Utf8JsonWriter json, PlanStep step, UnitSystem units)
    {
        json.WriteString("id", step.Id);
        json.WriteNumber("number", step.Number);
        json.WriteString("phase", JsonText.Camel(step.Phase.ToString()));
        json.WriteString("operation", step.Step.Operation.Name);
        json.WriteString("part", step.Step.Part.Name);
        json.WriteString("place", step.Step.Operation.Place);
        json.WriteNumber("hands", step.Step.Operation.Hands);
        json.WriteString("text", step.Text.In(units));
        json.Minutes("minutes", step.Time);
        json.Texts("after", step.After);
        json.Array("changes", step.Changes, change =>
        {
            json.WriteString("aspect", $"{change.After.Part.Name}.{change.After.Aspect.Name}");
            json.WriteString("from", States(change.Before));
            json.WriteString("to", States(change.After));
        });
        json.Array("waits", step.Waits, wait =>
        {
            if (wait.AfterStep is { } after) json.WriteString("afterStep", after);
            if (wait.Least is { } least) json.WriteNumber("leastMinutes", JsonText.Minutes(least.Low));
            if (wait.Most is { } most) json.WriteNumber("mostMinutes", JsonText.Minutes(most.High));
            json.WriteString("text", wait.Text.In(units));
            Reason(json, "because", wait.Reason, units);
        });
        json.Array("holds", step.Holds, hold => Hold(json, hold, units));
        json.Array("cautions", step.Cautions, caution => Caution(json, caution, units));
        json.Array("checks", step.Checks, check =>
        {
            json.WriteString("text", check.Text.In(units));
            json.WriteString("within", JsonText.Camel(check.Verdict.ToString()));
            json.WriteBoolean("during", check.During);
            json.WriteString("rule", check.Reason.Rule);
        });
        json.Texts("detail", step.Detail.Select(detail => detail.In(units)));
        json.Array("because", step.Because, reason => Reason(json, reason, units));
        json.Texts("provisional", step.Provisional.Select(settle => settle.In(units)));
    }

    private static void Question(Utf8JsonWriter json, PlanQuestion question, QuestionOutlook? outlook, UnitSystem units)
    {
        json.WriteString("id", question.Id);
        json.WriteString("fact", question.Id);
        json.WriteString("text", question.Text.In(units));
        if (question.How is { } how) json.WriteString("how", how.In(units));
        if (question.AtStep is { } step) json.WriteString("atStep", step);
        if (question.Doubted is { } doubted) json.WriteString("doubted", doubted.In(units));
        if (question.Assumed is { } assumed) json.WriteString("assumed", assumed.In(units));
        json.Texts("matters", question.Matters.Select(matters => matters.In(units)));
        json.WriteBoolean("safety", question.IsSafety);
        json.Texts("after", question.After);
        if (outlook is not null) QuestionJson.Outlook(json, outlook, units);
    }

    private static void Sharing(Utf8JsonWriter json, JobSharing sharing)
    {
        json.WriteStartObject("together");
        json.Minutes("saves", sharing.Saving);
        json.Array("alone", sharing.Alone, job =>
        {
            json.WriteString("job", job.Job.Job.Name);
            json.WriteString("on", job.Job.On.Name);
            json.Minutes("labour", job.Labour);
        });
        json.WriteEndObject();
    }

    private static void Finding(Utf8JsonWriter json, PlanFinding finding, UnitSystem units)
    {
        json.WriteString("cause", finding.Cause.Name);
        json.WriteString("part", finding.Part.Name);
        json.WriteString("text", finding.Text.In(units));
        json.WriteString("verdict", finding.Verdict switch { Truth.Yes => "sure", Truth.No => "excluded", _ => "possible" });
        json.Array("for", finding.For, reason => Reason(json, reason, units));
        json.Array("against", finding.Against, reason => Reason(json, reason, units));
    }

    private static void TellingCheck(Utf8JsonWriter json, PlanTellingCheck check, UnitSystem units)
    {
        json.WriteString("id", check.Id);
        json.WriteString("text", check.Text.In(units));
        if (check.How is { } how) json.WriteString("how", how.In(units));
        json.Minutes("labour", check.Labour);
        json.Texts("work", check.Work.Select(step => step.In(units)));
        json.Array("answers", check.Answers, answer =>
        {
            json.WriteString("answer", answer.Answer.In(units));
            json.Texts("confirms", answer.Confirms.Select(cause => cause.In(units)));
            json.Texts("rulesOut", answer.RulesOut.Select(cause => cause.In(units)));
        });
    }

    private static void Choice(Utf8JsonWriter json, PlanChoice choice, UnitSystem units)
    {
        json.WriteString("id", choice.Id);
        json.WriteString("text", choice.Text.In(units));
        json.WriteBoolean("fixed", choice.IsFixed);
        json.WriteString("taken", choice.Ways[choice.Taken].Text.In(units));
        json.Array("ways", choice.Ways, way =>
        {
            json.WriteString("id", way.Id);
            json.WriteString("text", way.Text.In(units));
            json.WriteNumber("rank", way.Rank);
            if (way.Labour is { } labour) json.Minutes("labour", labour);
            if (way.WhyNot is { } whyNot) json.WriteString("whyNot", whyNot.In(units));
        });
        json.Array("because", choice.Because, reason => Reason(json, reason, units));
    }

    private static void Hold(Utf8JsonWriter json, PlanHold hold, UnitSystem units)
    {
        json.WriteString("text", hold.Text.In(units));
        json.Texts("questions", hold.Questions);
        json.WriteBoolean("plansAgain", hold.PlansAgain);
        Reason(json, "because", hold.Reason, units);
    }

    private static void Item(Utf8JsonWriter json, PlanItem item, UnitSystem units)
    {
        json.WriteString("text", item.Text.In(units));
        json.Texts("steps", item.Steps);
        json.WriteBoolean("sure", item.IsSure);
        if (item.Reason is { } reason) Reason(json, "because", reason, units);
    }

    private static void Caution(Utf8JsonWriter json, PlanCaution caution, UnitSystem units)
    {
        json.WriteString("signal", JsonText.Camel(caution.Signal.ToString()));
        json.WriteString("text", caution.Text.In(units));
        json.WriteString("rule", caution.Reason.Rule);
    }

    private static void Reason(Utf8JsonWriter json, string name, Reason reason, UnitSystem units)
    {
        json.WriteStartObject(name);
        Reason(json, reason, units);
        json.WriteEndObject();
    }

    internal static void Reason(Utf8JsonWriter json, Reason reason, UnitSystem units)
    {
        json.WriteString("rule", reason.Rule);
        json.WriteString("pack", reason.Pack);
        json.WriteString("text", reason.Text.In(units));
        json.WriteString("basis", reason.Basis);
    }

    private static string States(Inference.GroundState state) =>
        string.Join("|", state.States.States().Select(index => state.Aspect.States[index]));
}
