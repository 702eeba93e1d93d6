using System.Globalization;
using System.Text.Json.Nodes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Tests.Shapes;

/// <summary>Gives plain scalars their types as an editor does: by the core schema of YAML 1.2.2, section 10.3.</summary>
internal static class YamlToJson
{
    public static JsonNode? Convert(YamlNode node) => node switch
    {
        YamlMapping map => new JsonObject(map.Entries.Select(entry => KeyValuePair.Create(entry.Name, Convert(entry.Value)))),
        YamlSequence list => new JsonArray([.. list.Items.Select(Convert)]),
        YamlScalar { IsNothing: true } => null,
        YamlScalar { IsPlain: true, Text: "true" or "True" or "TRUE" } => JsonValue.Create(true),
        YamlScalar { IsPlain: true, Text: "false" or "False" or "FALSE" } => JsonValue.Create(false),
        YamlScalar { IsPlain: true } scalar when decimal.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) =>
            JsonValue.Create(number),
        YamlScalar scalar => JsonValue.Create(scalar.Text),
        _ => throw new ArgumentException("not a readable value", nameof(node)),
    };
}
