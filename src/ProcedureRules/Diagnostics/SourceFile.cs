namespace ProcedureRules.Diagnostics;

/// <summary>A text with a name, which turns offsets into lines and columns.</summary>
/// <remarks>
/// Lines end with LF, CRLF or CR. Columns count UTF-16 units, as editors and build logs do. A byte order mark at
/// the start belongs to the encoding and is dropped, so that offsets count from the first character a writer sees.
/// </remarks>
public sealed class SourceFile
{
    private readonly int[] _lineStarts;

    /// <summary>Wraps a text that has been read.</summary>
    /// <param name="path">The path as messages show it; backslashes become slashes.</param>
    /// <param name="text">The whole text.</param>
    public SourceFile(string path, string text)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(text);
        Path = path.Replace('\\', '/');
        Text = text.StartsWith('\uFEFF') ? text[1..] : text;
        _lineStarts = FindLineStarts(Text);
    }

    /// <summary>The path as messages show it, with forward slashes.</summary>
    public string Path { get; }

    /// <summary>The text, without a byte order mark.</summary>
    public string Text { get; }

    /// <summary>How many lines the text has; an empty text has one.</summary>
    public int LineCount => _lineStarts.Length;

    /// <summary>The line, from 1, in which an offset lies; offsets outside the text count as its nearest end.</summary>
    /// <param name="offset">An offset into <see cref="Text"/>.</param>
    public int LineOf(int offset)
    {
        var found = Array.BinarySearch(_lineStarts, Clamp(offset));
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>The line and column, both from 1, of an offset.</summary>
    /// <param name="offset">An offset into <see cref="Text"/>; outside the text it counts as its nearest end.</param>
    public (int Line, int Column) PositionOf(int offset)
    {
        var line = LineOf(offset);
        return (line, Clamp(offset) - _lineStarts[line - 1] + 1);
    }

    /// <summary>The offset at which a line starts; outside the text, that of its first or last line.</summary>
    /// <param name="line">The line's number, from 1.</param>
    public int OffsetOf(int line) => _lineStarts[Math.Clamp(line, 1, _lineStarts.Length) - 1];

    /// <summary>The text of a line without its line break; empty for a line that does not exist.</summary>
    /// <param name="line">The line's number, from 1.</param>
    public string LineText(int line)
    {
        if (line < 1 || line > _lineStarts.Length)
            return "";

        var start = _lineStarts[line - 1];
        var end = line == _lineStarts.Length ? Text.Length : _lineStarts[line];
        return Text[start..end].TrimEnd('\r', '\n');
    }

    /// <summary>The span of a piece of this text.</summary>
    /// <param name="offset">Where it starts.</param>
    /// <param name="length">How many characters it covers.</param>
    public SourceSpan Span(int offset, int length) => new(this, offset, length);

    /// <inheritdoc/>
    public override string ToString() => Path;

    private int Clamp(int offset) => Math.Clamp(offset, 0, Text.Length);

    private static int[] FindLineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var i = 0; i < text.Length; i++)
        {
            var endsLine = text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'));
            if (endsLine)
                starts.Add(i + 1);
        }

        return [.. starts];
    }
}
