using System.Globalization;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>A text, with a way from each of its characters back to the file.</summary>
internal sealed class YamlScalar(SourceSpan span, string text, YamlStyle style) : YamlNode(span)
{
    private int[]? _map;

    /// <summary>The text that the YAML stands for: quotes, escapes and folding are resolved.</summary>
    public string Text { get; } = text;

    /// <summary>How the text is written.</summary>
    public YamlStyle Style { get; } = style;

    /// <summary>Whether it is written without quotes.</summary>
    public bool IsPlain => Style == YamlStyle.Plain;

    /// <summary>Whether nothing is written here: no value, <c>~</c> or <c>null</c>, which editors read as no value.</summary>
    public bool IsNothing => IsPlain && Text is "" or "~" or "null" or "Null" or "NULL";

    /// <summary>Whether it is what YAML 1.2 and the editors call an integer: plain decimal digits, of any size.</summary>
    public bool IsWholeNumber =>
        IsPlain && Text.Length > 0 && char.IsAsciiDigit(Text[^1]) && !Text.AsSpan(Text[0] is '-' or '+' ? 1 : 0).ContainsAnyExceptInRange('0', '9');

    /// <inheritdoc/>
    public override string Kind => IsPlain ? "a text" : "a quoted text";

    /// <summary>The place in the file of a piece of <see cref="Text"/>, such as a name within an expression.</summary>
    /// <param name="offset">Where the piece starts in the text.</param>
    /// <param name="length">How many characters of the text it covers.</param>
    public SourceSpan SpanAt(int offset, int length)
    {
        var start = SourceOffset(offset);
        var end = length > 0 ? SourceOffset(offset + length - 1) + 1 : start;
        return new SourceSpan(Span.File, start, Math.Max(0, end - start));
    }

    /// <summary>The offset in the file of a character of <see cref="Text"/>; behind the last one, the offset behind it.</summary>
    public int SourceOffset(int offset)
    {
        // Two threads may both make the map; they make the same one.
        _map ??= ScalarMap.Build(Span, Text, Style);
        return _map[Math.Clamp(offset, 0, Text.Length)];
    }

    /// <summary>Reads a plain <c>yes</c>, <c>no</c>, <c>true</c> or <c>false</c>; anything else is null.</summary>
    public bool? AsYesNo() => !IsPlain ? null : Text switch
    {
        "yes" or "true" => true,
        "no" or "false" => false,
        _ => null,
    };

    /// <summary>Reads a plain decimal whole number; anything else is null.</summary>
    public int? AsInteger() =>
        IsWholeNumber && int.TryParse(Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
