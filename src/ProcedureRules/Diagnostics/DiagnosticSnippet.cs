using System.Globalization;
using System.Text;

namespace ProcedureRules.Diagnostics;

/// <summary>Draws a diagnostic as the source line with a caret below the place that is meant.</summary>
internal static class DiagnosticSnippet
{
    // A file without line breaks would otherwise be printed whole for each of its mistakes.
    private const int Window = 160;
    private const int Before = 60;
    private const string Cut = "...";

    public static string Render(Diagnostic diagnostic)
    {
        var text = new StringBuilder(diagnostic.ToLine());
        var gutter = 2;
        if (diagnostic.Span.File is { Text.Length: > 0 } file)
        {
            var (line, column) = file.PositionOf(diagnostic.Span.Offset);
            var number = line.ToString(CultureInfo.InvariantCulture);
            var (shown, carets) = Draw(file.LineText(line), column - 1, diagnostic.Span.Length);
            gutter = number.Length;
            text.Append('\n').Append($"{number} | {shown}".TrimEnd());
            text.Append('\n').Append(' ', gutter).Append(" | ").Append(carets);
            if (diagnostic.Label is not null)
                text.Append(' ').Append(diagnostic.Label);
        }

        foreach (var note in diagnostic.Notes)
            text.Append('\n').Append(' ', gutter).Append(" = ").Append(Line(note));

        return text.ToString();
    }

    private static string Line(DiagnosticNote note) =>
        note.Span.File is null ? $"note: {note.Text}" : $"{note.Text}: {note.Span}";

    private static (string Shown, string Carets) Draw(string line, int start, int length)
    {
        var from = line.Length > Window && start > Before ? start - Before : 0;
        var to = Math.Min(line.Length, from + Window);
        start = Math.Min(start, line.Length);
        var end = Math.Max(start + 1, Math.Min(start + length, to));
        var head = from > 0 ? Cut : "";
        var tail = to < line.Length ? Cut : "";

        // Tabs are kept in both lines, so that the caret stands right whatever the width of a tab.
        var lead = string.Concat(line[from..start].Select(c => c == '\t' ? '\t' : ' '));
        var shown = string.Concat(line[from..to].Select(c => char.IsControl(c) && c != '\t' ? '\uFFFD' : c));
        return (head + shown + tail, new string(' ', head.Length) + lead + new string('^', end - start));
    }
}
