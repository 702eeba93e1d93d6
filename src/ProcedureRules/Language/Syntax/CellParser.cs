namespace ProcedureRules.Language.Syntax;

/// <summary>Parses the cells of decision tables that select a row.</summary>
internal static class CellParser
{
    public static Cell? Parse(TokenStream tokens)
    {
        var start = tokens.Current.Offset;
        var cell = Inner(tokens);
        return cell is null ? null : cell with { Offset = start, Length = tokens.Previous.End - start };
    }

    private static Cell? Inner(TokenStream tokens)
    {
        if (tokens.IsSymbol("-") && tokens.Ahead(1).Kind == TokenKind.End)
        {
            tokens.Take();
            return new Cell.Any();
        }

        if (tokens.Current.Kind == TokenKind.Figure) return new Cell.Within(Figure(tokens));
        if (tokens.Current.Kind == TokenKind.Symbol && Operators.Find(tokens.Current.Text, Operators.ComparisonLevel) is { } op)
        {
            var symbol = tokens.Take().Text;
            if (tokens.Current.Kind == TokenKind.Figure) return new Cell.Compares(op, Figure(tokens));
            tokens.Fail($"a figure after '{symbol}'");
            return null;
        }

        var words = new List<Expression.Name>();
        do
        {
            if (ExpressionParser.Name(tokens, "a word, a figure, a comparison such as '< 2 in', or '-' for any") is not { } word) return null;
            words.Add(word);
        }
        while (tokens.TakeSymbol("|") || tokens.TakeWord("or"));

        return new Cell.Words([.. words]);
    }

    private static Expression.Literal Figure(TokenStream tokens)
    {
        var token = tokens.Take();
        return new(token.Value) { Offset = token.Offset, Length = token.Length };
    }
}
