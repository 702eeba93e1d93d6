using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Syntax;

/// <summary>Cuts a piece of a snippet into tokens; figures are read as packs' figures are read everywhere.</summary>
internal static class Lexer
{
    // Longest first: a symbol that starts another must not hide it.
    private static readonly string[] LongSymbols = ["===", "<=", ">=", "==", "!=", "<>", "=<", "=>", "&&", "||"];

    /// <returns>The tokens with an end token behind them, or null when a figure is wrong (and the bag says so).</returns>
    public static List<Token>? Lex(Snippet snippet, int start, int end, DiagnosticBag bag)
    {
        var text = snippet.Text;
        var tokens = new List<Token>();
        for (var i = start; i < end;)
        {
            if (char.IsWhiteSpace(text[i]))
            {
                i++;
                continue;
            }

            if (FigureAt(text.AsSpan(i, end - i), tokens))
            {
                if (!Quantity.TryReadPrefix(text.AsSpan(i, end - i), out var value, out var consumed, out var fault))
                {
                    bag.Add(Messages.WrongFigure(snippet.SpanOf(i + fault.Offset, fault.Length), fault.Message, fault.Suggestion));
                    return null;
                }

                // A reader that takes nothing would keep this loop in one place.
                tokens.Add(new(TokenKind.Figure, text.Substring(i, Math.Max(1, consumed)), i, value));
            }
            else if (IsNameStart(text[i]))
            {
                var length = 1;
                while (i + length < end && IsNamePart(text[i + length])) length++;
                tokens.Add(new(TokenKind.Name, text.Substring(i, length), i));
            }
            else
            {
                tokens.Add(new(TokenKind.Symbol, SymbolAt(text.AsSpan(i, end - i)), i));
            }

            i = tokens[^1].End;
        }

        tokens.Add(new(TokenKind.End, "", end));
        return tokens;
    }

    public static bool IsNameStart(char c) => char.IsLetter(c) || c == '_';

    public static bool IsNamePart(char c) => char.IsLetterOrDigit(c) || c == '_';

    // A minus belongs to a figure only where a value may start; behind a value it is the operator.
    private static bool FigureAt(ReadOnlySpan<char> rest, List<Token> before)
    {
        if (rest[0] is not ('-' or '−')) return Quantity.StartsAt(rest);
        return !EndsValue(before) && rest.Length > 1 && rest[1] is (>= '0' and <= '9') or '.' && Quantity.StartsAt(rest[1..]);
    }

    private static bool EndsValue(List<Token> tokens) => tokens.Count > 0 && tokens[^1] switch
    {
        { Kind: TokenKind.Figure } => true,
        { Kind: TokenKind.Name, Text: var word } => word is not ("or" or "and" or "not" or "is" or "is_not"),
        { Text: var symbol } => symbol is ")" or "]",
    };

    private static string SymbolAt(ReadOnlySpan<char> rest)
    {
        foreach (var symbol in LongSymbols)
            if (rest.StartsWith(symbol, StringComparison.Ordinal)) return symbol;
        return char.IsHighSurrogate(rest[0]) && rest.Length > 1 ? rest[..2].ToString() : rest[..1].ToString();
    }
}
