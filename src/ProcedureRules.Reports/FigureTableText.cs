using System.Globalization;

namespace ProcedureRules.Reports;

/// <summary>A table of figures as text for people.</summary>
public static class FigureTableText
{
    private const int Gap = 3;
    private const string NoFigure = "-";

    /// <summary>The lines of the table, its notes and its sources.</summary>
    /// <param name="table">The table.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(FigureTable table, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(table);
        var writer = new ReportWriter(Math.Max(40, width));
        writer.Write("", table.Title, Tone.Heading);
        writer.Blank();
        var cells = table.Rows.Select(row => row.Figures.Select((figure, i) => Cell(figure, table.Columns[i].Digits)).ToList()).ToList();
        var widths = table.Columns.Select((column, i) => cells.Select(row => row[i].Length).Append(column.Name.Length).Max()).ToList();
        writer.WriteRow(Joined(table.Columns.Select(column => column.Name), widths), "", Tone.Heading);
        for (var i = 0; i < cells.Count; i++) writer.WriteRow(Joined(cells[i], widths), table.Rows[i].Note ?? "", Tone.Plain);
        writer.Blank();
        foreach (var note in table.Notes) writer.Write("", note);
        foreach (var basis in table.Basis) writer.Write("Basis: ", basis, Tone.Quiet);
        return writer.Lines;
    }

    private static string Cell(double? figure, int digits)
    {
        if (figure is not { } value) return NoFigure;
        var text = value.ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.StartsWith('-') && !text.AsSpan().ContainsAnyInRange('1', '9') ? text[1..] : text;
    }

    private static string Joined(IEnumerable<string> cells, List<int> widths) =>
        string.Join("", cells.Select((cell, i) => cell.PadLeft(widths[i] + (i == 0 ? 0 : Gap))));
}
