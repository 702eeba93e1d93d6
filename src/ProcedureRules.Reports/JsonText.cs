using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What the JSON reports share: how an object, a list, a time are written.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The text of an object.</summary>
    public static string Object(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    public static void Array<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>A time from its least to its most, in minutes.</summary>
    public static void Minutes(this Utf8JsonWriter json, string name, Quantity time)
    {
        json.WriteStartObject(name);
        json.WriteNumber("low", Minutes(time.Low));
        json.WriteNumber("high", Minutes(time.High));
        json.WriteEndObject();
    }

    /// <summary>Seconds as minutes; a tenth of one is finer than anybody estimates labour.</summary>
    public static double Minutes(double seconds) => Math.Round(seconds / 60, 1);

    /// <summary>A name of a value as JSON has it.</summary>
    public static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
