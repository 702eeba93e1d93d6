using System.Text;

namespace ProcedureRules.Reports.Sheets;

/// <summary>Text inside Markdown, such that it reads as it was and marks nothing up.</summary>
internal static class MarkdownText
{
    private const string Special = @"\`*_[]<>#|~&!$";

    public static string Escape(string text)
    {
        var escaped = new StringBuilder();
        foreach (var word in PrintableText.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (escaped.Length > 0) escaped.Append(' ');
            var isFirst = escaped.Length == 0;
            for (var i = 0; i < word.Length; i++)
            {
                // What opens a list or a rule does so only where a line begins.
                var opens = isFirst && (i == 0 && word[0] is '+' or '-' or '=' || (word[i] is '.' or ')' && i > 0 && i == word.Length - 1 && word[..i].All(char.IsAsciiDigit)));
                if (opens || Special.Contains(word[i], StringComparison.Ordinal)) escaped.Append('\\');
                escaped.Append(word[i]);
            }
        }

        return escaped.ToString();
    }
}
