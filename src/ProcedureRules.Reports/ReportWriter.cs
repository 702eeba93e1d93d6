namespace ProcedureRules.Reports;

/// <summary>Collects lines of a text report and wraps them with a hanging indent.</summary>
internal sealed class ReportWriter(int width)
{
    private readonly List<ReportLine> _lines = [];

    public IReadOnlyList<ReportLine> Lines => _lines;

    public void Blank()
    {
        if (_lines.Count > 0 && _lines[^1].Text.Length > 0) _lines.Add(new ReportLine("", Tone.Plain));
    }

    public void Heading(string text)
    {
        Blank();
        Write("", text.ToUpperInvariant(), Tone.Heading);
        _lines.Add(new ReportLine(new string('-', Math.Min(text.Length, width)), Tone.Heading));
    }

    /// <summary>Writes <paramref name="lead"/> and the text behind it; further lines start below the text.</summary>
    public void Write(string lead, string text, Tone tone = Tone.Plain)
    {
        var indent = new string(' ', lead.Length);
        var room = Math.Max(20, width - lead.Length);
        var first = true;
        foreach (var line in Wrap(text, room))
        {
            _lines.Add(new ReportLine(((first ? lead : indent) + line).TrimEnd(), tone));
            first = false;
        }
    }

    /// <summary>Writes the text with <paramref name="tail"/> set at the right edge of its first line, or below where it does not fit.</summary>
    public void WriteWithTail(string lead, string text, string tail, Tone tone)
    {
        var indent = new string(' ', lead.Length);
        var lines = Wrap(text, Math.Max(20, width - lead.Length)).ToList();
        var last = (lines.Count == 1 ? lead : indent) + lines[^1];
        for (var i = 0; i < lines.Count - 1; i++) _lines.Add(new ReportLine((i == 0 ? lead : indent) + lines[i], tone));
        if (last.Length + 2 + tail.Length <= width)
        {
            _lines.Add(new ReportLine(last.PadRight(width - tail.Length) + tail, tone));
        }
        else
        {
            _lines.Add(new ReportLine(last, tone));
            _lines.Add(new ReportLine(tail.PadLeft(width), tone));
        }
    }

    /// <summary>Writes a row of a table, whose blanks are kept, with a note behind it, which wraps.</summary>
    public void WriteRow(string cells, string note, Tone tone)
    {
        if (note.Length == 0) _lines.Add(new ReportLine(cells, tone));
        else Write(cells + "   ", note, tone);
    }

    private static IEnumerable<string> Wrap(string text, int room)
    {
        var line = "";
        foreach (var word in text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > room)
            {
                yield return line;
                line = "";
            }
            line = line.Length == 0 ? word : $"{line} {word}";
        }
        yield return line;
    }
}
