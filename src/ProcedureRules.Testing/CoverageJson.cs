using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>Coverage as JSON.</summary>
public static class CoverageJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the document.</summary>
    public static string Write(CoverageReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            writer.WriteStartObject();
            writer.WriteNumber("cases", report.Cases);
            writer.WriteNumber("rules", report.Rules.Count);
            writer.WriteNumber("rulesFired", report.Fired);
            writer.WriteNumber("conditions", report.Conditions);
            writer.WriteNumber("conditionsSeenBothWays", report.Settled);
            writer.WriteStartArray("coverage");
            foreach (var rule in report.Rules) Rule(writer, rule);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Rule(Utf8JsonWriter writer, RuleCoverage rule)
    {
        writer.WriteStartObject();
        writer.WriteString("pack", rule.Pack);
        writer.WriteString("rule", rule.Rule);
        Place(writer, rule.Span);
        writer.WriteNumber("matched", rule.Matched);
        writer.WriteNumber("fired", rule.Fired);
        writer.WriteNumber("sure", rule.Sure);
        writer.WriteStartArray("conditions");
        foreach (var condition in rule.Conditions)
        {
            writer.WriteStartObject();
            writer.WriteString("condition", condition.Text);
            Place(writer, condition.Span);
            writer.WriteNumber("yes", condition.Yes);
            writer.WriteNumber("no", condition.No);
            writer.WriteNumber("unknown", condition.Unknown);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter writer, SourceSpan span)
    {
        writer.WriteString("file", span.File?.Path);
        writer.WriteNumber("line", span.Line);
        writer.WriteNumber("column", span.Column);
    }
}
