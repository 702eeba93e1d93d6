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
            writer.WriteNumber("conclusions", report.Conclusions);
            writer.WriteNumber("conclusionsUsed", report.Used);
            Array(writer, "coverage", report.Rules, rule => Rule(writer, rule));
            Array(writer, "operations", report.Operations, operation => Named(writer, operation.Pack, "operation", operation.Operation, operation.Span, ("planned", operation.Planned)));
            Array(writer, "facts", report.Facts, fact => Named(writer, fact.Pack, "fact", fact.Fact, fact.Span, ("known", fact.Known), ("asked", fact.Asked)));
            Array(writer, "jobs", report.Jobs, job => Named(writer, job.Pack, "job", job.Job, job.Span, ("asked", job.Asked), ("finished", job.Finished)));
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
        Array(writer, "conditions", rule.Conditions, condition =>
            Entry(writer, "condition", condition.Text, condition.Span, ("yes", condition.Yes), ("no", condition.No), ("unknown", condition.Unknown)));
        Array(writer, "conclusions", rule.Conclusions, conclusion => Entry(writer, "conclusion", conclusion.Text, conclusion.Span, ("used", conclusion.Used)));
        writer.WriteEndObject();
    }

    private static void Array<T>(Utf8JsonWriter writer, string name, IReadOnlyList<T> items, Action<T> write)
    {
        writer.WriteStartArray(name);
        foreach (var item in items) write(item);
        writer.WriteEndArray();
    }

    private static void Named(Utf8JsonWriter writer, string pack, string sort, string name, SourceSpan span, params (string Name, int Count)[] counts)
    {
        writer.WriteStartObject();
        writer.WriteString("pack", pack);
        Rest(writer, sort, name, span, counts);
    }

    private static void Entry(Utf8JsonWriter writer, string sort, string text, SourceSpan span, params (string Name, int Count)[] counts)
    {
        writer.WriteStartObject();
        Rest(writer, sort, text, span, counts);
    }

    private static void Rest(Utf8JsonWriter writer, string sort, string text, SourceSpan span, (string Name, int Count)[] counts)
    {
        writer.WriteString(sort, text);
        Place(writer, span);
        foreach (var (name, count) in counts) writer.WriteNumber(name, count);
        writer.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter writer, SourceSpan span)
    {
        writer.WriteString("file", span.File?.Path);
        writer.WriteNumber("line", span.Line);
        writer.WriteNumber("column", span.Column);
    }
}
