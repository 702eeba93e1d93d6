using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ProcedureRules.Logic;
using ProcedureRules.Planning;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>A plan as JSON, in the form that <c>rules/schema/plan.schema.json</c> describes.</summary>
public static class PlanJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The JSON text.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units of figures inside texts; minutes are numbers in either.</param>
    /// <param name="sharing">What several jobs save by being done together; null where that is not told.</param>
    public static string Write(Plan plan, UnitSystem units, JobSharing? sharing = null)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("vehicle", plan.Situation.Title);
            Array(json, "jobs", plan.Situation.Jobs, job =>
            {
                json.WriteString("job", job.Job.Name);
                json.WriteString("on", job.On.Name);
                json.WriteString("text", JobTitle.Of(job));
            });
            Minutes(json, "labour", plan.Labour);
            if (sharing is not null) Sharing(json, sharing);
            Array(json, "cautions", plan.Cautions, caution => Caution(json, caution, units));
            Array(json, "steps", plan.Steps, step => Step(json, step, units));
            Array(json, "questions", plan.Questions, question => Question(json, question, units));
            Array(json, "findings", plan.Findings, finding => Finding(json, finding, units));
            Array(json, "tellingChecks", plan.TellingChecks, check => TellingCheck(json, check, units));
            Array(json, "conflicts", plan.Conflicts, conflict =>
            {
                json.WriteString("fact", conflict.Key.ToString());
                Texts(json, "values", conflict.Values.Select(value => value.In(units)));
            });
            Array(json, "stops", plan.Stops, stop =>
            {
                json.WriteString("text", stop.Text.In(units));
                json.WriteBoolean("sure", stop.IsSure);
                Reason(json, "because", stop.Reason, units);
            });
            Array(json, "holds", plan.Holds, hold => Hold(json, hold, units));
            Array(json, "choices", plan.Choices, choice => Choice(json, choice, units));
            if (plan.ChoicesBound is { } bound) json.WriteNumber("choicesBoundMinutes", InMinutes(bound.Low));
            Array(json, "supplies", plan.Supplies, item => Item(json, item, units));
            Array(json, "tools", plan.Tools, item => Item(json, item, units));
            Array(json, "offers", plan.Offers, item => Item(json, item, units));
            Array(json, "assumptions", plan.Assumptions, item => Item(json, item, units));
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Step(Utf8JsonWriter json, PlanStep step, UnitSystem units)
    {
        json.WriteString("id", step.Id);
        json.WriteNumber("number", step.Number);
        json.WriteString("phase", Camel(step.Phase.ToString()));
        json.WriteString("operation", step.Step.Operation.Name);
        json.WriteString("part", step.Step.Part.Name);
        json.WriteString("place", step.Step.Operation.Place);
        json.WriteNumber("hands", step.Step.Operation.Hands);
        json.WriteString("text", step.Text.In(units));
        Minutes(json, "minutes", step.Time);
        Texts(json, "after", step.After);
        Array(json, "changes", step.Changes, change =>
        {
            json.WriteString("aspect", $"{change.After.Part.Name}.{change.After.Aspect.Name}");
            json.WriteString("from", States(change.Before));
            json.WriteString("to", States(change.After));
        });
        Array(json, "waits", step.Waits, wait =>
        {
            if (wait.AfterStep is { } after) json.WriteString("afterStep", after);
            if (wait.Least is { } least) json.WriteNumber("leastMinutes", InMinutes(least.Low));
            if (wait.Most is { } most) json.WriteNumber("mostMinutes", InMinutes(most.High));
            json.WriteString("text", wait.Text.In(units));
            Reason(json, "because", wait.Reason, units);
        });
        Array(json, "holds", step.Holds, hold => Hold(json, hold, units));
        Array(json, "cautions", step.Cautions, caution => Caution(json, caution, units));
        Array(json, "checks", step.Checks, check =>
        {
            json.WriteString("text", check.Text.In(units));
            json.WriteString("within", Camel(check.Verdict.ToString()));
            json.WriteBoolean("during", check.During);
            json.WriteString("rule", check.Reason.Rule);
        });
        Texts(json, "detail", step.Detail.Select(detail => detail.In(units)));
        Array(json, "because", step.Because, reason => Reason(json, reason, units));
        Texts(json, "provisional", step.Provisional.Select(settle => settle.In(units)));
    }

    private static void Question(Utf8JsonWriter json, PlanQuestion question, UnitSystem units)
    {
        json.WriteString("id", question.Id);
        json.WriteString("fact", question.Id);
        json.WriteString("text", question.Text.In(units));
        if (question.How is { } how) json.WriteString("how", how.In(units));
        if (question.AtStep is { } step) json.WriteString("atStep", step);
        if (question.Doubted is { } doubted) json.WriteString("doubted", doubted.In(units));
        if (question.Assumed is { } assumed) json.WriteString("assumed", assumed.In(units));
        Texts(json, "matters", question.Matters.Select(matters => matters.In(units)));
    }

    private static void Sharing(Utf8JsonWriter json, JobSharing sharing)
    {
        json.WriteStartObject("together");
        Minutes(json, "saves", sharing.Saving);
        Array(json, "alone", sharing.Alone, job =>
        {
            json.WriteString("job", job.Job.Job.Name);
            json.WriteString("on", job.Job.On.Name);
            Minutes(json, "labour", job.Labour);
        });
        json.WriteEndObject();
    }

    private static void Finding(Utf8JsonWriter json, PlanFinding finding, UnitSystem units)
    {
        json.WriteString("cause", finding.Cause.Name);
        json.WriteString("part", finding.Part.Name);
        json.WriteString("text", finding.Text.In(units));
        json.WriteString("verdict", finding.Verdict switch { Truth.Yes => "sure", Truth.No => "excluded", _ => "possible" });
        Array(json, "for", finding.For, reason => Reason(json, reason, units));
        Array(json, "against", finding.Against, reason => Reason(json, reason, units));
    }

    private static void TellingCheck(Utf8JsonWriter json, PlanTellingCheck check, UnitSystem units)
    {
        json.WriteString("id", check.Id);
        json.WriteString("text", check.Text.In(units));
        if (check.How is { } how) json.WriteString("how", how.In(units));
        Minutes(json, "labour", check.Labour);
        Texts(json, "work", check.Work.Select(step => step.In(units)));
        Array(json, "answers", check.Answers, answer =>
        {
            json.WriteString("answer", answer.Answer.In(units));
            Texts(json, "confirms", answer.Confirms.Select(cause => cause.In(units)));
            Texts(json, "rulesOut", answer.RulesOut.Select(cause => cause.In(units)));
        });
    }

    private static void Choice(Utf8JsonWriter json, PlanChoice choice, UnitSystem units)
    {
        json.WriteString("id", choice.Id);
        json.WriteString("text", choice.Text.In(units));
        json.WriteBoolean("fixed", choice.IsFixed);
        json.WriteString("taken", choice.Ways[choice.Taken].Text.In(units));
        Array(json, "ways", choice.Ways, way =>
        {
            json.WriteString("id", way.Id);
            json.WriteString("text", way.Text.In(units));
            json.WriteNumber("rank", way.Rank);
            if (way.Labour is { } labour) Minutes(json, "labour", labour);
            if (way.WhyNot is { } whyNot) json.WriteString("whyNot", whyNot.In(units));
        });
        Array(json, "because", choice.Because, reason => Reason(json, reason, units));
    }

    private static void Hold(Utf8JsonWriter json, PlanHold hold, UnitSystem units)
    {
        json.WriteString("text", hold.Text.In(units));
        Texts(json, "questions", hold.Questions);
        json.WriteBoolean("plansAgain", hold.PlansAgain);
        Reason(json, "because", hold.Reason, units);
    }

    private static void Item(Utf8JsonWriter json, PlanItem item, UnitSystem units)
    {
        json.WriteString("text", item.Text.In(units));
        Texts(json, "steps", item.Steps);
        json.WriteBoolean("sure", item.IsSure);
        if (item.Reason is { } reason) Reason(json, "because", reason, units);
    }

    private static void Caution(Utf8JsonWriter json, PlanCaution caution, UnitSystem units)
    {
        json.WriteString("signal", Camel(caution.Signal.ToString()));
        json.WriteString("text", caution.Text.In(units));
        json.WriteString("rule", caution.Reason.Rule);
    }

    private static void Reason(Utf8JsonWriter json, string name, Reason reason, UnitSystem units)
    {
        json.WriteStartObject(name);
        Reason(json, reason, units);
        json.WriteEndObject();
    }

    private static void Reason(Utf8JsonWriter json, Reason reason, UnitSystem units)
    {
        json.WriteString("rule", reason.Rule);
        json.WriteString("pack", reason.Pack);
        json.WriteString("text", reason.Text.In(units));
        json.WriteString("basis", reason.Basis);
    }

    private static void Minutes(Utf8JsonWriter json, string name, Quantity time)
    {
        json.WriteStartObject(name);
        json.WriteNumber("low", InMinutes(time.Low));
        json.WriteNumber("high", InMinutes(time.High));
        json.WriteEndObject();
    }

    // A tenth of a minute is finer than anybody estimates labour.
    private static double InMinutes(double seconds) => Math.Round(seconds / 60, 1);

    private static void Array<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static string States(Inference.GroundState state) =>
        string.Join("|", state.States.States().Select(index => state.Aspect.States[index]));

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
