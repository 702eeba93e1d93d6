using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Syntax;

/// <summary>
/// Parses the snippets that stand in packs and sheets. Total: a text that is wrong gives null and a diagnostic with the place, what was
/// found and what was expected.
/// </summary>
internal static class Parser
{
    /// <summary>The longest snippet; far beyond what anybody reads.</summary>
    public const int MostCharacters = 4000;

    /// <summary>A whole snippet as one expression.</summary>
    public static Expression? Expression(Snippet snippet, DiagnosticBag bag) =>
        Whole(snippet, bag, tokens => new ExpressionParser(tokens).Parse());

    /// <summary>A piece of a snippet as one expression.</summary>
    public static Expression? Expression(Snippet snippet, int start, int end, DiagnosticBag bag) =>
        Whole(snippet, start, end, bag, tokens => new ExpressionParser(tokens).Parse());

    /// <summary>An entry of <c>when</c>.</summary>
    public static Condition? Condition(Snippet snippet, DiagnosticBag bag) => Whole(snippet, bag, ConditionParser.Parse);

    /// <summary><c>s before t</c>.</summary>
    public static OrderSyntax? Order(Snippet snippet, DiagnosticBag bag) => Whole(snippet, bag, ConditionParser.ParseOrder);

    /// <summary>A single name.</summary>
    public static Expression.Name? Name(Snippet snippet, string what, DiagnosticBag bag) =>
        Whole(snippet, bag, tokens => ExpressionParser.Name(tokens, what));

    /// <summary><c>part.fact</c>.</summary>
    public static Expression.Path? Path(Snippet snippet, DiagnosticBag bag) =>
        Whole(snippet, bag, tokens => new ExpressionParser(tokens).ParsePath());

    /// <summary>A cell of a decision table.</summary>
    public static Cell? Cell(Snippet snippet, DiagnosticBag bag) => Whole(snippet, bag, CellParser.Parse);

    /// <summary>A text with expressions in braces.</summary>
    public static TemplateSyntax? Template(Snippet snippet, DiagnosticBag bag) =>
        IsTooLong(snippet, bag) ? null : TemplateParser.Parse(snippet, bag);

    private static T? Whole<T>(Snippet snippet, DiagnosticBag bag, Func<TokenStream, T?> parse)
        where T : SyntaxNode => Whole(snippet, 0, snippet.Text.Length, bag, parse);

    private static T? Whole<T>(Snippet snippet, int start, int end, DiagnosticBag bag, Func<TokenStream, T?> parse)
        where T : SyntaxNode
    {
        if (IsTooLong(snippet, bag) || Lexer.Lex(snippet, start, end, bag) is not { } tokens) return null;
        var stream = new TokenStream(snippet, tokens, bag);
        var node = parse(stream);
        if (node is not null && stream.Current.Kind != TokenKind.End) stream.Fail("an operator or the end of the text");
        return stream.HasFailed ? null : node;
    }

    private static bool IsTooLong(Snippet snippet, DiagnosticBag bag)
    {
        if (snippet.Text.Length <= MostCharacters) return false;
        bag.Add(Messages.SnippetTooLong(snippet.Span, MostCharacters));
        return true;
    }
}
