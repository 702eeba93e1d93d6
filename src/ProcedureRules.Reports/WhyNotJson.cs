using System.Text.Json;
using ProcedureRules.Explaining;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>Why something is not in a plan as JSON, in the form that <c>rules/schema/why_not.schema.json</c> describes.</summary>
public static class WhyNotJson
{
    /// <summary>The JSON text.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="units">The units of figures inside texts.</param>
    public static string Write(WhyNotAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return JsonText.Object(json =>
        {
            json.WriteString("item", answer.Item.In(units));
            json.Texts("notTaken", answer.NotTaken.Select(way => way.In(units)));
            json.Array("forbiddenBy", answer.ForbiddenBy, reason => PlanJson.Reason(json, reason, units));
            json.Array("rules", answer.Rules, rule => Rule(json, rule, units));
            json.Array("change", answer.Change, fact =>
            {
                json.WriteString("fact", fact.Id);
                json.WriteString("text", fact.Text.In(units));
                json.WriteString("statement", fact.Statement);
            });
            json.WriteString("search", JsonText.Camel(answer.Search.ToString()));
            json.WriteNumber("tried", answer.Tried);
        });
    }

    private static void Rule(Utf8JsonWriter json, WhyNotRule rule, UnitSystem units)
    {
        json.WriteString("rule", rule.Rule);
        json.WriteString("pack", rule.Pack);
        json.WriteString("text", rule.Text.In(units));
        json.WriteString("basis", rule.Basis);
        json.Array("conditions", rule.Conditions, condition =>
        {
            json.WriteString("text", condition.Text.In(units));
            json.WriteString("holds", condition.Holds switch { Truth.Yes => "yes", Truth.No => "no", _ => "unknown" });
            json.Texts("read", condition.Read.Select(read => read.In(units)));
        });
    }
}
