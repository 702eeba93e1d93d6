using System.Globalization;
using System.Text.Json;
using ProcedureRules.Quantities;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Reports;

/// <summary>A schedule as JSON, in the form that <c>rules/schema/schedule.schema.json</c> describes.</summary>
public static class ScheduleJson
{
    /// <summary>The JSON text.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="units">The units of figures inside texts; minutes are numbers in either.</param>
    public static string Write(Schedule schedule, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        return JsonText.Object(json =>
        {
            json.WriteString("vehicle", schedule.Plan.Situation.Title);
            json.WriteString("shop", schedule.Shop.Title);
            json.WriteNumber("technicians", schedule.Shop.Technicians);
            Moment(json, "start", schedule.Start);
            Moment(json, "finish", schedule.Finish);
            Estimate(json, "labour", schedule.Labour);
            Estimate(json, "elapsed", schedule.Elapsed);
            json.WriteNumber("idleMinutes", Minutes(schedule.Idle));
            json.Array("preparations", schedule.Preparations, preparation => Preparation(json, preparation, units));
            json.Array("steps", schedule.Steps, step => Step(json, step, units));
            json.Array("criticalChain", schedule.CriticalChain, link =>
            {
                json.WriteString("step", link.StepId);
                json.WriteString("cause", Lower(link.Cause.ToString()));
            });
            json.Array("unkeptWaits", schedule.UnkeptWaits, unkept =>
            {
                json.WriteString("step", unkept.StepId);
                json.WriteNumber("overMinutes", Minutes(unkept.Over));
                json.WriteString("text", unkept.Wait.Text.In(units));
            });
        });
    }

    private static void Step(Utf8JsonWriter json, ScheduledStep step, UnitSystem units)
    {
        json.WriteString("id", step.Step.Id);
        json.WriteNumber("number", step.Step.Number);
        json.WriteString("text", step.Step.Text.In(units));
        json.WriteString("place", step.Step.Step.Operation.Place);
        Moment(json, "start", step.Start);
        Moment(json, "end", step.End);
        json.WriteStartArray("technicians");
        foreach (var technician in step.Technicians) json.WriteNumberValue(technician);
        json.WriteEndArray();
        json.WriteNumber("helpers", step.Helpers);
        if (step.WaitOver is { } over) Moment(json, "waitOver", over);
        json.WriteBoolean("critical", step.IsCritical);
        json.WriteBoolean("alone", step.IsAlone);
        json.WriteBoolean("split", step.IsSplit);
        json.WriteBoolean("sure", step.Step.Provisional.Count == 0);
    }

    private static void Preparation(Utf8JsonWriter json, Preparation preparation, UnitSystem units)
    {
        json.WriteString("kind", Lower(preparation.Kind.ToString()));
        json.WriteString("text", preparation.Text.In(units));
        Moment(json, "by", preparation.By);
        if (preparation.StepId is { } step) json.WriteString("step", step);
        json.WriteBoolean("sure", preparation.IsSure);
    }

    private static void Estimate(Utf8JsonWriter json, string name, Estimate estimate)
    {
        json.WriteStartObject(name);
        json.WriteNumber("low", Minutes(estimate.Low));
        json.WriteNumber("likely", Minutes(estimate.Likely));
        json.WriteNumber("high", Minutes(estimate.High));
        json.WriteEndObject();
    }

    // The time of the shop, wherever that is.
    private static void Moment(Utf8JsonWriter json, string name, DateTime moment) =>
        json.WriteString(name, moment.ToString("yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture));

    private static double Minutes(TimeSpan span) => Math.Round(span.TotalMinutes, 1);

    private static string Lower(string name) => name.ToLowerInvariant();
}
