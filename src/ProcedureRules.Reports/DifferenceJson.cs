using System.Text.Json;
using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What changes from one plan to another as JSON, in the form that <c>rules/schema/what_if.schema.json</c> describes.</summary>
public static class DifferenceJson
{
    /// <summary>The JSON text.</summary>
    /// <param name="difference">The difference.</param>
    /// <param name="units">The units of figures inside texts; minutes are numbers in either.</param>
    public static string Write(PlanDifference difference, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(difference);
        return JsonText.Object(json =>
        {
            json.WriteBoolean("changes", !difference.IsNothing);
            Whole(json, "before", difference.Before);
            Whole(json, "after", difference.After);
            json.Array("stepsIn", difference.StepsIn, step => Step(json, step, units));
            json.Array("stepsOut", difference.StepsOut, step => Step(json, step, units));
            json.Array("stepsMoved", difference.StepsMoved, moved =>
            {
                Step(json, moved.Step, units);
                json.WriteNumber("numberBefore", moved.NumberBefore);
            });
            json.Array("stepsChanged", difference.StepsChanged, changed =>
            {
                Step(json, changed.After, units);
                json.WriteStartObject("before");
                Step(json, changed.Before, units);
                json.WriteEndObject();
            });
            json.Array("in", difference.In, entry => WhyJson.Entry(json, entry, units));
            json.Array("out", difference.Out, entry => WhyJson.Entry(json, entry, units));
        });
    }

    private static void Whole(Utf8JsonWriter json, string name, Plan plan)
    {
        json.WriteStartObject(name);
        json.WriteNumber("steps", plan.Steps.Count);
        json.Minutes("labour", plan.Labour);
        json.WriteNumber("questions", plan.Questions.Count);
        json.WriteBoolean("stops", plan.IsStopped);
        json.WriteEndObject();
    }

    private static void Step(Utf8JsonWriter json, PlanStep step, UnitSystem units)
    {
        json.WriteString("id", step.Id);
        json.WriteNumber("number", step.Number);
        json.WriteString("text", step.Text.In(units));
        json.Minutes("minutes", step.Time);
        json.WriteBoolean("sure", step.Provisional.Count == 0);
    }
}
