using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace ProcedureRules.Diagnostics;

/// <summary>Writes diagnostics as JSON, with the same content as the text.</summary>
public static class DiagnosticJson
{
    // Quotes and angle brackets stay readable; the output is a file or a pipe, not a piece of a web page.
    private static readonly JsonWriterOptions Options =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes an array of diagnostics.</summary>
    /// <param name="diagnostics">The diagnostics, in the order wanted.</param>
    /// <returns>Indented JSON whose lines end with LF.</returns>
    public static string ToJson(IEnumerable<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(diagnostics);
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            writer.WriteStartArray();
            foreach (var diagnostic in diagnostics)
                Write(writer, diagnostic);
            writer.WriteEndArray();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <summary>Writes one diagnostic as an object.</summary>
    /// <param name="writer">Where to write to.</param>
    /// <param name="diagnostic">What to write.</param>
    public static void Write(Utf8JsonWriter writer, Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(diagnostic);
        writer.WriteStartObject();
        writer.WriteString("code", diagnostic.Code);
        writer.WriteString("severity", diagnostic.SeverityWord);
        WritePlace(writer, diagnostic.Span);
        writer.WriteString("message", diagnostic.Message);
        if (diagnostic.Label is not null)
            writer.WriteString("label", diagnostic.Label);
        if (diagnostic.Suggestion is not null)
            writer.WriteString("suggestion", diagnostic.Suggestion);

        writer.WriteStartArray("notes");
        foreach (var note in diagnostic.Notes)
        {
            writer.WriteStartObject();
            writer.WriteString("text", note.Text);
            WritePlace(writer, note.Span);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter writer, SourceSpan span)
    {
        if (span.File is null)
            return;

        var (line, column) = span.File.PositionOf(span.Offset);
        writer.WriteString("file", span.File.Path);
        writer.WriteNumber("line", line);
        writer.WriteNumber("column", column);
        writer.WriteNumber("length", span.Length);
    }
}
