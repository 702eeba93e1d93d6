using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace ProcedureRules.Testing;

/// <summary>Mutation as JSON.</summary>
public static class MutationJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the document.</summary>
    public static string Write(MutationReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            writer.WriteStartObject();
            writer.WriteNumber("mutants", report.Mutants.Count);
            writer.WriteNumber("killed", report.Killed);
            writer.WriteNumber("score", Math.Round(report.Score, 1));
            writer.WriteStartArray("results");
            foreach (var mutant in report.Mutants) Mutant(writer, mutant);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Mutant(Utf8JsonWriter writer, MutantResult mutant)
    {
        writer.WriteStartObject();
        writer.WriteString("pack", mutant.Pack);
        writer.WriteString("rule", mutant.Rule);
        writer.WriteString("file", mutant.Span.File?.Path);
        writer.WriteNumber("line", mutant.Span.Line);
        writer.WriteNumber("column", mutant.Span.Column);
        writer.WriteString("change", mutant.Change);
        writer.WriteString("outcome", mutant.Outcome.ToString().ToLowerInvariant());
        if (mutant.By is { } by) writer.WriteString("by", by);
        else writer.WriteString("due", mutant.Due);
        if (mutant.Ground is { } ground) writer.WriteString("why", ground);
        writer.WriteEndObject();
    }
}
