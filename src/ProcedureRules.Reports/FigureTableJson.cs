using System.Text.Json;

namespace ProcedureRules.Reports;

/// <summary>A table of figures as JSON: <c>title</c>, <c>rows</c> with a property for each column, <c>notes</c>, <c>basis</c>.</summary>
public static class FigureTableJson
{
    /// <summary>The JSON text.</summary>
    public static string Write(FigureTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return JsonText.Object(json =>
        {
            json.WriteString("title", table.Title);
            json.WriteStartArray("rows");
            foreach (var row in table.Rows) Row(json, table, row);
            json.WriteEndArray();
            json.Texts("notes", table.Notes);
            json.Texts("basis", table.Basis);
        });
    }

    private static void Row(Utf8JsonWriter json, FigureTable table, FigureRow row)
    {
        json.WriteStartObject();
        for (var i = 0; i < table.Columns.Count; i++)
        {
            var column = table.Columns[i];
            if (row.Figures[i] is { } figure) json.WriteNumber(column.Name, Math.Round((decimal)figure, column.Digits + 1));
            else json.WriteNull(column.Name);
        }
        if (row.Note is { } note) json.WriteString("note", note);
        json.WriteEndObject();
    }
}
