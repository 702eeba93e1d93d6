using System.Globalization;

namespace ProcedureRules.Diagnostics;

/// <summary>One mistake or remark, with its place and what helps to mend it.</summary>
/// <param name="Code">The stable code, such as <c>PR0101</c>; see <see cref="DiagnosticCodes"/>.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Span">Where it is.</param>
/// <param name="Message">What is wrong, as one sentence without a full stop.</param>
public sealed record Diagnostic(string Code, Severity Severity, SourceSpan Span, string Message)
{
    /// <summary>Remarks, often with the other place that takes part.</summary>
    public IReadOnlyList<DiagnosticNote> Notes { get; init; } = [];

    /// <summary>The nearest right spelling, where there is one.</summary>
    public string? Suggestion { get; init; }

    /// <summary>What to say behind the caret of the snippet, such as <c>left is a length, right is a pressure</c>.</summary>
    public string? Label { get; init; }

    /// <summary>The line that grep, editors and build logs understand: <c>file:line:column: error CODE: message</c>.</summary>
    public string ToLine()
    {
        var place = Span.File is null ? "" : $"{Span}: ";
        return $"{place}{SeverityWord} {Code}: {Message.ReplaceLineEndings(" ")}";
    }

    /// <summary>The line, the source line with a caret below the place, and the notes; lines end with LF.</summary>
    public string ToSnippet() => DiagnosticSnippet.Render(this);

    /// <inheritdoc/>
    public override string ToString() => ToLine();

    internal string SeverityWord => Severity.ToString().ToLower(CultureInfo.InvariantCulture);

    /// <summary>The same diagnostic with one more note that points at a place.</summary>
    internal Diagnostic Note(string text, SourceSpan span = default) =>
        this with { Notes = [.. Notes, new DiagnosticNote(span, text)] };
}
