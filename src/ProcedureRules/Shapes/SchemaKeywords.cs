using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

namespace ProcedureRules.Shapes;

/// <summary>Writes the schema keywords of each kind of shape.</summary>
/// <remarks>
/// Editors give plain YAML scalars a type before they look at the schema: by YAML 1.2 <c>2</c> is a number and
/// <c>true</c> a boolean, while <c>yes</c> is a string (by YAML 1.1 a boolean as well). The reader takes any of them for
/// a text. So the schema lets all of them pass where a text may stand: it is never narrower than the reader, and wider
/// only where JSON cannot tell what was written.
/// </remarks>
internal sealed class SchemaKeywords(Utf8JsonWriter writer)
{
    /// <summary>Writes a property whose value is the schema of a shape.</summary>
    public void WriteProperty(string name, Shape shape, string documentation = "", string? whenLeftOut = null)
    {
        writer.WriteStartObject(name);
        Write(shape, documentation, whenLeftOut);
        writer.WriteEndObject();
    }

    /// <summary>Writes the keywords of a shape into the object that is open.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="documentation">What the place says about it; if nothing, the shape's own documentation counts.</param>
    /// <param name="whenLeftOut">What holds if the value is not written.</param>
    public void Write(Shape shape, string documentation = "", string? whenLeftOut = null)
    {
        var description = documentation.Length > 0 ? documentation : shape.Documentation;
        if (whenLeftOut is not null)
            description = $"{description} Default: {whenLeftOut}.".TrimStart();
        if (description.Length > 0)
            writer.WriteString("description", description);

        switch (shape)
        {
            case TextShape text: WriteText(text); break;
            case WordShape word: WriteWords(word); break;
            case YesNoShape: WriteYesNo(); break;
            case IntegerShape integer: WriteInteger(integer); break;
            case ListShape list: WriteList(list); break;
            case MapShape map: WriteMap(map); break;
            case DictionaryShape dictionary: WriteDictionary(dictionary); break;
            case OneOfShape oneOf: WriteOneOf(oneOf); break;
            case RefShape named: WriteReference(named); break;
            default: throw new UnreachableException();
        }
    }

    private void WriteText(TextShape shape)
    {
        WriteStrings("type", ["string", "number", "boolean"]);
        if (shape.Pattern is not null)
            writer.WriteString("pattern", shape.Pattern.Anchored);
        if (shape.Examples.Count > 0)
            WriteStrings("examples", shape.Examples);
    }

    private void WriteWords(WordShape shape)
    {
        writer.WriteStartArray("enum");
        foreach (var word in shape.Words)
        {
            writer.WriteStringValue(word);
            if (word is "true" or "false")
                writer.WriteBooleanValue(word == "true");
            else if (decimal.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
                writer.WriteNumberValue(number);
        }

        writer.WriteEndArray();
    }

    private void WriteYesNo()
    {
        writer.WriteStartArray("enum");
        writer.WriteStringValue("yes");
        writer.WriteStringValue("no");
        writer.WriteBooleanValue(true);
        writer.WriteBooleanValue(false);
        writer.WriteEndArray();
    }

    private void WriteInteger(IntegerShape shape)
    {
        writer.WriteString("type", "integer");
        writer.WriteNumber("minimum", shape.Min);
        writer.WriteNumber("maximum", shape.Max);
    }

    private void WriteList(ListShape shape)
    {
        writer.WriteString("type", "array");
        if (shape.Min > 0)
            writer.WriteNumber("minItems", shape.Min);
        WriteProperty("items", shape.Item);
    }

    private void WriteMap(MapShape shape)
    {
        writer.WriteString("type", "object");
        writer.WriteStartObject("properties");
        foreach (var field in shape.Fields)
            WriteProperty(field.Name, field.Shape, field.Documentation, field.Default);
        writer.WriteEndObject();

        var required = shape.Fields.Where(field => field.IsRequired).Select(field => field.Name).ToList();
        if (required.Count > 0)
            WriteStrings("required", required);
        writer.WriteBoolean("additionalProperties", false);
    }

    private void WriteDictionary(DictionaryShape shape)
    {
        writer.WriteString("type", "object");
        if (shape.KeyPattern is not null)
        {
            writer.WriteStartObject("propertyNames");
            writer.WriteString("pattern", shape.KeyPattern.Anchored);
            writer.WriteEndObject();
        }

        WriteProperty("additionalProperties", shape.Value);
    }

    private void WriteOneOf(OneOfShape shape)
    {
        writer.WriteStartArray("anyOf");
        foreach (var way in shape.Alternatives)
        {
            writer.WriteStartObject();
            Write(way.Shape);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    // In draft-07 a $ref silences everything beside it; wrapped, it leaves the description alone.
    private void WriteReference(RefShape shape)
    {
        writer.WriteStartArray("allOf");
        writer.WriteStartObject();
        writer.WriteString("$ref", $"#/definitions/{shape.Name}");
        writer.WriteEndObject();
        writer.WriteEndArray();
    }

    private void WriteStrings(string name, IEnumerable<string> values)
    {
        writer.WriteStartArray(name);
        foreach (var value in values)
            writer.WriteStringValue(value);
        writer.WriteEndArray();
    }
}
