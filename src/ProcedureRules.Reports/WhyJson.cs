using System.Text.Json;
using ProcedureRules.Explaining;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>Explanations as JSON, in the form that <c>rules/schema/why.schema.json</c> describes.</summary>
public static class WhyJson
{
    /// <summary>The JSON text.</summary>
    /// <param name="answers">The explanations.</param>
    /// <param name="units">The units of figures inside texts.</param>
    public static string Write(IReadOnlyList<WhyAnswer> answers, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answers);
        return JsonText.Object(json => json.Array("answers", answers, answer =>
        {
            Entry(json, answer.Item, units);
            var told = answer.InShort;
            json.WriteStartObject("short");
            json.Texts("reasons", told.Reasons.Select(reason => reason.Text.In(units)));
            json.Texts("facts", told.Facts.Select(fact => fact.Text.In(units)));
            json.Texts("for", told.For.Select(asking => asking.Text.In(units)));
            json.WriteEndObject();
            json.Array("because", answer.Tree.Because, because => Node(json, because, units));
        }));
    }

    /// <summary>An entry of a plan: its sort, id, step and words.</summary>
    internal static void Entry(Utf8JsonWriter json, PlanEntry entry, UnitSystem units)
    {
        json.WriteString("sort", JsonText.Camel(entry.Sort.ToString()));
        json.WriteString("id", entry.Id);
        if (entry.Step is { } step) json.WriteString("step", step);
        json.WriteString("text", entry.Text.In(units));
    }

    private static void Node(Utf8JsonWriter json, WhyNode node, UnitSystem units)
    {
        json.WriteString("sort", JsonText.Camel(node.Sort.ToString()));
        json.WriteString("text", node.Text.In(units));
        if (node.Id is { } id) json.WriteString("id", id);
        if (node.Rule is { } rule) json.WriteString("rule", rule);
        if (node.Pack is { Length: > 0 } pack) json.WriteString("pack", pack);
        if (node.Basis is { Length: > 0 } basis) json.WriteString("basis", basis);
        json.Array("because", node.Because, because => Node(json, because, units));
    }
}
