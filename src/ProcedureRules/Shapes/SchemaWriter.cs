using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace ProcedureRules.Shapes;

/// <summary>Writes a shape as a JSON Schema (draft-07), with which editors check and complete YAML files.</summary>
internal static class SchemaWriter
{
    private static readonly JsonWriterOptions Options =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the schema; the same shape always gives the same text.</summary>
    /// <param name="root">What a whole file looks like.</param>
    /// <param name="id">The schema's own address.</param>
    /// <param name="title">What editors show as the kind of file.</param>
    /// <returns>Indented JSON whose lines end with LF.</returns>
    public static string Write(Shape root, string id, string title)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            var keywords = new SchemaKeywords(writer);
            writer.WriteStartObject();
            writer.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
            writer.WriteString("$id", id);
            writer.WriteString("title", title);
            keywords.Write(root);
            WriteDefinitions(writer, keywords, root);
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void WriteDefinitions(Utf8JsonWriter writer, SchemaKeywords keywords, Shape root)
    {
        var named = NamedShapes.In(root);
        if (named.Count == 0)
            return;

        writer.WriteStartObject("definitions");
        foreach (var (name, shape) in named)
            keywords.WriteProperty(name, shape.Target, shape.Documentation);
        writer.WriteEndObject();
    }
}
