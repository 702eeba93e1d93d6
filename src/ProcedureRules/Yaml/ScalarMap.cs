using System.Globalization;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>Finds for each character of a scalar's text where it stands in the file.</summary>
/// <remarks>
/// Whatever the style, quoting and folding change only white space and escapes: the visible characters of the text are
/// those of the raw file in the same order. So both are walked side by side. A visible character of the text must be
/// the next visible one of the file, or the escape that stands there; white space is matched loosely, as folding joins
/// lines and a block drops its indentation. Should the two ever disagree, every character maps to the scalar's start,
/// which is still a true place.
/// </remarks>
internal static class ScalarMap
{
    /// <summary>Offsets in the file, one per character of the text and one for its end.</summary>
    public static int[] Build(SourceSpan span, string text, YamlStyle style)
    {
        var map = new int[text.Length + 1];
        var raw = span.File is null ? "" : span.File.Text;
        var start = Math.Clamp(span.Offset, 0, raw.Length);
        var end = Math.Clamp(span.End, start, raw.Length);
        if (!Walk(raw.AsSpan(0, end), ContentStart(raw, start, end, style), text, style, map))
            Array.Fill(map, span.Offset);

        return map;
    }

    private static int ContentStart(string raw, int start, int end, YamlStyle style)
    {
        if (style == YamlStyle.Plain)
            return start;
        if (style is YamlStyle.SingleQuoted or YamlStyle.DoubleQuoted)
            return Math.Min(start + 1, end);

        // A block's content begins below its header, which may hold indicators and a comment.
        var lineEnd = raw.AsSpan(start, end - start).IndexOfAny('\n', '\r');
        return lineEnd < 0 ? end : start + lineEnd;
    }

    private static bool Walk(ReadOnlySpan<char> raw, int at, string text, YamlStyle style, int[] map)
    {
        for (var i = 0; i < text.Length; i++)
        {
            var isSpace = IsSpace(text[i]);
            if (!isSpace)
                at = SkipSpace(raw, at, style);

            if (at < raw.Length && raw[at] == '\\' && style == YamlStyle.DoubleQuoted)
            {
                if (!Unescape(raw[at..], out var decoded, out var length))
                    return false;
                if (text.AsSpan(i).StartsWith(decoded, StringComparison.Ordinal))
                {
                    map.AsSpan(i, decoded.Length).Fill(at);
                    i += decoded.Length - 1;
                    at += length;
                    continue;
                }
            }

            map[i] = Math.Min(at, raw.Length);
            if (at < raw.Length && raw[at] == text[i])
                at += IsDoubledQuote(raw, at, style) ? 2 : 1;
            else if (!isSpace)
                return false;
            else if (at < raw.Length && IsSpace(raw[at]))
                at++;
        }

        map[text.Length] = Math.Min(at, raw.Length);
        return true;
    }

    // Escapes that stand for white space are skipped as well, and so is a backslash that joins two lines.
    private static int SkipSpace(ReadOnlySpan<char> raw, int at, YamlStyle style)
    {
        while (at < raw.Length)
        {
            if (IsSpace(raw[at]))
                at++;
            else if (style == YamlStyle.DoubleQuoted && raw[at] == '\\' && Unescape(raw[at..], out var decoded, out var length) && decoded.All(IsSpace))
                at += length;
            else
                break;
        }

        return at;
    }

    private static bool IsDoubledQuote(ReadOnlySpan<char> raw, int at, YamlStyle style) =>
        style == YamlStyle.SingleQuoted && raw[at] == '\'' && at + 1 < raw.Length && raw[at + 1] == '\'';

    private static bool IsSpace(char c) => c is ' ' or '\t' or '\n' or '\r';

    // The escapes of YAML 1.2.2, section 5.7.
    private static bool Unescape(ReadOnlySpan<char> raw, out string decoded, out int length)
    {
        length = 2;
        decoded = "";
        if (raw.Length < 2)
            return false;

        var digits = raw[1] switch { 'x' => 2, 'u' => 4, 'U' => 8, _ => 0 };
        if (digits > 0)
        {
            length += digits;
            if (raw.Length < length
                || !int.TryParse(raw.Slice(2, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var code)
                || code is < 0 or > 0x10FFFF)
                return false;
            decoded = code is >= 0xD800 and <= 0xDFFF ? ((char)code).ToString() : char.ConvertFromUtf32(code);
            return true;
        }

        decoded = raw[1] switch
        {
            '0' => "\0",
            'a' => "\a",
            'b' => "\b",
            't' => "\t",
            'n' => "\n",
            'v' => "\v",
            'f' => "\f",
            'r' => "\r",
            'e' => "\u001B",
            'N' => "\u0085",
            '_' => "\u00A0",
            'L' => "\u2028",
            'P' => "\u2029",
            '\n' or '\r' => "",
            var same => same.ToString(),
        };
        return true;
    }
}
