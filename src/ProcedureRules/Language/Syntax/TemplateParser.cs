using System.Text;
using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Syntax;

/// <summary>Parses texts with expressions in braces; a doubled brace is a brace.</summary>
internal static class TemplateParser
{
    public static TemplateSyntax? Parse(Snippet snippet, DiagnosticBag bag)
    {
        var text = snippet.Text;
        var parts = new List<TemplatePart>();
        var plain = new StringBuilder();
        var plainStart = 0;
        var isWrong = false;
        for (var i = 0; i < text.Length;)
        {
            var c = text[i];
            if (c is '{' or '}' && i + 1 < text.Length && text[i + 1] == c)
            {
                plain.Append(c);
                i += 2;
                continue;
            }

            if (c == '}')
            {
                bag.Add(Messages.StrayBrace(snippet.SpanOf(i, 1)));
                isWrong = true;
                i++;
                continue;
            }

            if (c != '{')
            {
                plain.Append(c);
                i++;
                continue;
            }

            var end = text.AsSpan(i + 1).IndexOfAny('}', '{');
            if (end < 0 || text[i + 1 + end] == '{')
            {
                bag.Add(Messages.OpenBrace(snippet.SpanOf(i, 1)));
                return null;
            }

            Flush(i);
            end += i + 1;
            if (Hole(snippet, i + 1, end, bag) is { } expression)
                parts.Add(new TemplatePart.Hole(expression) { Offset = i, Length = end + 1 - i });
            else
                isWrong = true;
            i = end + 1;
            plainStart = i;
        }

        Flush(text.Length);
        return isWrong ? null : new([.. parts]) { Length = text.Length };

        void Flush(int end)
        {
            if (plain.Length > 0) parts.Add(new TemplatePart.Plain(plain.ToString()) { Offset = plainStart, Length = end - plainStart });
            plain.Clear();
        }
    }

    private static Expression? Hole(Snippet snippet, int start, int end, DiagnosticBag bag)
    {
        if (!snippet.Text.AsSpan(start, end - start).IsWhiteSpace()) return Parser.Expression(snippet, start, end, bag);
        bag.Add(Messages.EmptyBraces(snippet.SpanOf(start - 1, end - start + 2)));
        return null;
    }
}
