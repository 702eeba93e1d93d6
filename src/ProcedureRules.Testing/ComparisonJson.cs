using System.Text.Json;
using ProcedureRules.Diagnostics;
using ProcedureRules.Reports;
using ProcedureRules.Testing.Comparing;

namespace ProcedureRules.Testing;

/// <summary>A comparison as JSON, in the form that <c>rules/schema/compare.schema.json</c> describes.</summary>
public static class ComparisonJson
{
    /// <summary>The JSON text.</summary>
    /// <param name="comparison">The comparison.</param>
    public static string Write(PackComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return JsonText.Object(json =>
        {
            json.WriteBoolean("stepEnough", comparison.IsStepEnough);
            json.WriteNumber("compared", comparison.Compared);
            json.Array("versions", comparison.Versions, version => Version(json, version));
            json.Array("changes", comparison.Changes, change => Change(json, change));
            json.Array("causes", comparison.Causes, cause => Cause(json, cause));
            json.Array("unseen", comparison.Unseen, change => Change(json, change));
            json.Array("plans", comparison.Plans, plan => Plan(json, plan));
            json.Array("onlyBefore", comparison.OnlyBefore, one =>
            {
                json.WriteString("name", one.Name);
                json.WriteString("why", one.Why.Message);
            });
            json.Texts("onlyAfter", comparison.OnlyAfter);
        });
    }

    private static void Version(Utf8JsonWriter json, VersionStep version)
    {
        json.WriteString("pack", version.Pack);
        if (version.Before is { } before) json.WriteString("before", before);
        if (version.After is { } after) json.WriteString("after", after);
        if (version.Due is { } due) json.WriteString("due", ComparisonWords.Word(due));
        json.WriteBoolean("enough", version.IsEnough);
        if (version is { IsEnough: false, Least: { } least }) json.WriteString("least", least);
    }

    private static void Change(Utf8JsonWriter json, PackChange change)
    {
        if (change.Pack.Length > 0) json.WriteString("pack", change.Pack);
        json.WriteString("sort", change.Sort);
        json.WriteString("name", change.Name);
        if (change.OldName is { } old) json.WriteString("oldName", old);
        json.WriteString("kind", JsonText.Camel(change.Kind.ToString()));
        json.Texts("keys", change.Keys);
        json.WriteString("due", ComparisonWords.Word(change.Due));
        Place(json, change.Span);
    }

    private static void Cause(Utf8JsonWriter json, ChangeCause cause)
    {
        json.WriteBoolean("traced", cause.IsTraced);
        json.Array("changes", cause.Changes, change => Change(json, change));
        json.Array("effects", cause.Effects, effect =>
        {
            json.WriteString("sort", JsonText.Camel(effect.Sort.ToString()));
            json.WriteString("text", effect.Text);
            json.Texts("plans", effect.Plans);
        });
    }

    private static void Plan(Utf8JsonWriter json, ComparedPlan plan)
    {
        json.WriteString("name", plan.Name);
        if (plan.Trouble is { } trouble) json.WriteString("trouble", trouble);
        if (plan.Difference is not { } difference) return;
        json.WriteNumber("stepsIn", difference.StepsIn.Count);
        json.WriteNumber("stepsOut", difference.StepsOut.Count);
        json.WriteNumber("stepsMoved", difference.StepsMoved.Count);
        json.WriteNumber("stepsChanged", difference.StepsChanged.Count);
        json.Minutes("labourBefore", difference.Before.Labour);
        json.Minutes("labourAfter", difference.After.Labour);
    }

    private static void Place(Utf8JsonWriter json, SourceSpan span)
    {
        json.WriteString("file", span.File?.Path);
        json.WriteNumber("line", span.Line);
        json.WriteNumber("column", span.Column);
    }
}
