namespace ProcedureRules.Diagnostics;

/// <summary>A piece of a source file.</summary>
/// <param name="File">The file, or null where a diagnostic belongs to no file.</param>
/// <param name="Offset">Where the piece starts in the file's text.</param>
/// <param name="Length">How many characters it covers; 0 is a point.</param>
public readonly record struct SourceSpan(SourceFile? File, int Offset, int Length)
{
    /// <summary>No place in any file.</summary>
    public static SourceSpan None => default;

    /// <summary>The line of the start, from 1; 0 without a file.</summary>
    public int Line => File?.LineOf(Offset) ?? 0;

    /// <summary>The column of the start, from 1; 0 without a file.</summary>
    public int Column => File?.PositionOf(Offset).Column ?? 0;

    /// <summary>The offset behind the last character.</summary>
    public int End => Offset + Length;

    /// <summary>The smallest span that covers this one and another of the same file.</summary>
    /// <param name="other">The other span; of another file, it is left out.</param>
    public SourceSpan To(SourceSpan other)
    {
        if (File is null || !ReferenceEquals(File, other.File))
            return this;

        var start = Math.Min(Offset, other.Offset);
        return new SourceSpan(File, start, Math.Max(End, other.End) - start);
    }

    /// <summary><c>file:line:column</c>, or an empty text without a file.</summary>
    public override string ToString()
    {
        if (File is null)
            return "";

        var (line, column) = File.PositionOf(Offset);
        return $"{File.Path}:{line}:{column}";
    }
}
