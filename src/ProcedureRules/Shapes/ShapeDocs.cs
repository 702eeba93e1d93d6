using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace ProcedureRules.Shapes;

/// <summary>Writes the tables of the language reference from the shapes.</summary>
internal static class ShapeDocs
{
    /// <summary>A Markdown table of a mapping's keys; lines end with LF.</summary>
    public static string Table(MapShape map)
    {
        var table = new StringBuilder("| key | value | meaning |\n|---|---|---|\n");
        foreach (var field in map.Fields)
            table.Append(Row(field)).Append('\n');

        return table.ToString();
    }

    private static string Row(Field field)
    {
        var meaning = field.Documentation.Length > 0 ? field.Documentation : field.Shape.Documentation;
        var due = field.IsRequired ? " **Required.**" : field.Default is { } value ? $" Default: {Written(value)}." : "";
        return $"| `{field.Name}` | {Cell(Value(field.Shape))} | {Cell(meaning + due)} |";
    }

    private static string Value(Shape shape) => RefShape.Resolve(shape) switch
    {
        TextShape text => text.Format ?? "text",
        WordShape word => string.Join(", ", word.Words.Select(w => $"`{w}`")),
        YesNoShape => "`yes`, `no`",
        IntegerShape integer => string.Create(CultureInfo.InvariantCulture, $"whole number, {integer.Min} to {integer.Max}"),
        ListShape list => Several(ItemOf(list)),
        MapShape map => map.Noun,
        DictionaryShape dictionary => $"mapping, each value: {Value(dictionary.Value)}",
        OneOfShape oneOf => oneOf.Noun,
        _ => throw new UnreachableException(),
    };

    // A named shape is described in its own place; its name says enough here.
    private static string ItemOf(ListShape list) => RefShape.Resolve(list.Item) switch
    {
        MapShape or OneOfShape when list.Item is RefShape named => named.Name,
        var item => Value(item),
    };

    // What is written as it stands is set as code; what only says what is meant has blanks.
    private static string Written(string value) => value.Contains(' ', StringComparison.Ordinal) ? value : $"`{value}`";

    private static string Several(string item)
    {
        if (item.StartsWith("a ", StringComparison.Ordinal) || item.StartsWith("an ", StringComparison.Ordinal) || item.StartsWith('`'))
            return $"list, each {item}";
        var end = item.IndexOf(' ', StringComparison.Ordinal) is >= 0 and var blank ? blank : item.Length;
        return $"list of {item[..end]}s{item[end..]}";
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).ReplaceLineEndings(" ");
}
