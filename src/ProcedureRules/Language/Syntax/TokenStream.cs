using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Syntax;

/// <summary>The tokens of a snippet with a place among them; says what was found where something else was expected, once.</summary>
internal sealed class TokenStream(Snippet snippet, List<Token> tokens, DiagnosticBag bag)
{
    private int _next;

    public bool HasFailed { get; private set; }

    public Snippet Snippet { get; } = snippet;

    public Token Current => tokens[_next];

    public Token Previous => tokens[Math.Max(0, _next - 1)];

    public Token Ahead(int by) => tokens[Math.Min(_next + by, tokens.Count - 1)];

    public Token Take()
    {
        var token = Current;
        if (token.Kind != TokenKind.End) _next++;
        return token;
    }

    public bool IsSymbol(string text) => Current.Kind == TokenKind.Symbol && Current.Text == text;

    public bool IsWord(string text) => Current.Kind == TokenKind.Name && Current.Text == text;

    public bool TakeSymbol(string text)
    {
        if (!IsSymbol(text)) return false;
        Take();
        return true;
    }

    public bool TakeWord(string text)
    {
        if (!IsWord(text)) return false;
        Take();
        return true;
    }

    /// <summary>Reports that something else was expected here; only the first time, since what follows would be guesses.</summary>
    public void Fail(string expected)
    {
        var token = Current;
        var span = Snippet.SpanOf(token.Offset, token.Length);
        if (token.Kind == TokenKind.Symbol && Operators.Ours(token.Text) is { } ours)
            Fail(Messages.ForeignOperator(span, token.Text, ours));
        else if (DecimalComma(token) is { } written)
            Fail(Messages.DecimalComma(span, written));
        else if (token.Kind == TokenKind.Name && _next > 0 && Previous is { Kind: TokenKind.Figure } figure && char.IsAsciiDigit(figure.Text[^1]))
            Fail(Messages.UnknownUnit(span, token.Text, UnitTable.Nearest(token.Text)));
        else
            Fail(Messages.Unexpected(span, expected, Found(token)));
    }

    public void Fail(Diagnostic diagnostic)
    {
        if (!HasFailed) bag.Add(diagnostic);
        HasFailed = true;
    }

    private string? DecimalComma(Token token)
    {
        if (token.Text != "," || Previous.Kind != TokenKind.Figure || Previous.End != token.Offset || Ahead(1) is not { Kind: TokenKind.Figure } next) return null;
        return next.Offset == token.End && char.IsAsciiDigit(next.Text[0]) ? $"{Previous.Text}.{next.Text}" : null;
    }

    private static string Found(Token token) => token.Kind == TokenKind.End ? "the end of the text" : Messages.Quote(token.Text);
}
