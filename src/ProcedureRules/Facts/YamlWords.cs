using System.Globalization;
using System.Text;

namespace ProcedureRules.Facts;

/// <summary>Writes texts such that YAML reads them back.</summary>
internal static class YamlWords
{
    /// <summary>The text, in quotes unless it is as plain as a name or a figure with its unit.</summary>
    public static string Write(string text) => IsPlain(text) ? text : Quote(text);

    /// <summary>The text in double quotes.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            if (c is '"' or '\\')
                quoted.Append('\\').Append(c);
            else if (c is >= ' ' and <= '~' or (>= '\u00A1' and <= '\u2027') or (>= '\u2030' and < '\uD800'))
                quoted.Append(c);
            else
                quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
        }

        return quoted.Append('"').ToString();
    }

    private static bool IsPlain(string text) =>
        text.Length > 0 && (char.IsAsciiLetterOrDigit(text[0]) || text[0] is '-' or '.') && text is not ("null" or "Null" or "NULL" or "unknown" or "-")
        && text[^1] is not (' ' or ':') && !text.StartsWith("- ", StringComparison.Ordinal) && !text.StartsWith("---", StringComparison.Ordinal)
        && !text.StartsWith("...", StringComparison.Ordinal)
        && text.All(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '.' or '-' or '_' or '/' or '|' or '%' or '(' or ')');
}
