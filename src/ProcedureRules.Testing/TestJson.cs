using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>Results as JSON.</summary>
public static class TestJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the document.</summary>
    public static string Write(IReadOnlyList<CaseResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            writer.WriteStartObject();
            writer.WriteNumber("cases", results.Count);
            writer.WriteNumber("failed", results.Count(result => !result.Passed));
            writer.WriteNumber("expectations", results.Sum(result => result.Expectations.Count));
            writer.WriteStartArray("results");
            foreach (var result in results) Case(writer, result);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Case(Utf8JsonWriter writer, CaseResult result)
    {
        writer.WriteStartObject();
        writer.WriteString("scenario", result.Case.Scenario);
        writer.WriteString("row", result.Case.Row);
        Place(writer, result.Case.Span);
        writer.WriteBoolean("passed", result.Passed);
        writer.WriteNumber("milliseconds", Math.Round(result.Time.TotalMilliseconds, 1));
        writer.WriteStartArray("expectations");
        foreach (var expectation in result.Expectations) Expectation(writer, expectation);
        writer.WriteEndArray();
        Texts(writer, "diagnostics", result.Diagnostics.Select(mistake => mistake.ToLine()));
        writer.WriteEndObject();
    }

    private static void Expectation(Utf8JsonWriter writer, ExpectationResult expectation)
    {
        writer.WriteStartObject();
        writer.WriteString("expected", expectation.Expected);
        Place(writer, expectation.Span);
        writer.WriteNumber("turn", expectation.Turn);
        writer.WriteBoolean("passed", expectation.IsMet);
        if (!expectation.IsMet)
        {
            writer.WriteString("came", expectation.Came);
            Texts(writer, "because", expectation.Because);
        }

        writer.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter writer, SourceSpan span)
    {
        writer.WriteString("file", span.File?.Path);
        writer.WriteNumber("line", span.Line);
        writer.WriteNumber("column", span.Column);
    }

    private static void Texts(Utf8JsonWriter writer, string name, IEnumerable<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (var text in texts) writer.WriteStringValue(text);
        writer.WriteEndArray();
    }
}
