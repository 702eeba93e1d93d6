using System.Text.Json;
using ProcedureRules.Explaining;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What hangs on a question, as JSON.</summary>
internal static class QuestionJson
{
    public static void Outlook(Utf8JsonWriter json, QuestionOutlook outlook, UnitSystem units)
    {
        json.WriteNumber("swingMinutes", JsonText.Minutes(outlook.Swing.High));
        json.Minutes("finding", outlook.Finding);
        json.Texts("tools", outlook.Tools.Select(tool => tool.In(units)));
        if (outlook.Answers.Count == 0) return;
        json.Texts("always", outlook.Always.Select(step => step.Id));
        json.Array("answers", outlook.Answers, answer =>
        {
            json.WriteString("answer", answer.Answer.In(units));
            json.WriteString("outcome", OutlookText.Outcome(answer, units));
            json.WriteBoolean("matters", answer.Matters);
            if (answer.Difference is not { } difference) return;
            json.Texts("stepsIn", difference.StepsIn.Select(step => step.Id));
            json.Texts("stepsOut", difference.StepsOut.Select(step => step.Id));
            json.WriteBoolean("stops", difference.After.IsStopped);
            json.Minutes("labour", difference.After.Labour);
        });
    }
}
