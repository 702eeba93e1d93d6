using ProcedureRules.Diagnostics;

namespace ProcedureRules.Language.Syntax;

/// <summary>Recursive descent over expressions, one method a level of binding.</summary>
internal sealed class ExpressionParser(TokenStream tokens)
{
    /// <summary>How deep brackets, functions and prefixes may nest; keeps the stack bounded on any input.</summary>
    public const int MostLevels = 64;

    private int _depth;

    public Expression? Parse() => Binary(Operators.LoosestLevel);

    public Expression.Path? ParsePath()
    {
        if (Name(tokens, "a part") is not { } owner) return null;
        if (tokens.TakeSymbol(".")) return PathFrom(owner);
        tokens.Fail($"a point and the name of a fact after {Messages.Quote(owner.Text)}");
        return null;
    }

    public static Expression.Name? Name(TokenStream tokens, string what)
    {
        if (tokens.Current.Kind == TokenKind.Name)
        {
            var token = tokens.Take();
            return new(token.Text) { Offset = token.Offset, Length = token.Length };
        }

        tokens.Fail(what);
        return null;
    }

    private Expression? Binary(int level)
    {
        if (level == Operators.NotLevel) return Not();
        if (level == Operators.ComparisonLevel) return Comparison();
        if (level == Operators.UnaryLevel) return Minus();
        var left = Binary(level + 1);
        while (left is not null && Operator(level) is { } op)
        {
            tokens.Take();
            if (Binary(level + 1) is not { } right) return null;
            left = Span(new Expression.Binary(op, left, right), left.Offset);
        }

        return left;
    }

    private Expression? Not()
    {
        var start = tokens.Current.Offset;
        if (!tokens.TakeWord("not")) return Binary(Operators.ComparisonLevel);
        return Deeper(Not) is { } operand ? Span(new Expression.Unary(UnaryOperator.Not, operand), start) : null;
    }

    private Expression? Comparison()
    {
        if (Binary(Operators.SumLevel) is not { } left) return null;
        Expression? comparison;
        if (Operator(Operators.ComparisonLevel) is { } op)
        {
            tokens.Take();
            comparison = Binary(Operators.SumLevel) is { } right ? Span(new Expression.Binary(op, left, right), left.Offset) : null;
        }
        else if (tokens.IsWord("is") || tokens.IsWord("is_not"))
        {
            comparison = IsWhat(left);
        }
        else
        {
            return left;
        }

        if (comparison is null || (Operator(Operators.ComparisonLevel) is null && !tokens.IsWord("is") && !tokens.IsWord("is_not"))) return comparison;
        var next = tokens.Current;
        tokens.Fail(Messages.ChainedComparison(tokens.Snippet.SpanOf(next.Offset, next.Length)));
        return null;
    }

    private Expression.Is? IsWhat(Expression left)
    {
        var isNegated = tokens.Take().Text == "is_not";
        isNegated |= tokens.TakeWord("not");
        var right = tokens.IsSymbol("[") ? WordList() : Binary(Operators.SumLevel);
        return right is null ? null : Span(new Expression.Is(left, isNegated, right), left.Offset);
    }

    private Expression.Words? WordList()
    {
        var start = tokens.Take().Offset;
        var words = new List<Expression.Name>();
        do
        {
            if (Name(tokens, "a word") is not { } word) return null;
            words.Add(word);
        }
        while (tokens.TakeSymbol(","));

        if (tokens.TakeSymbol("]")) return Span(new Expression.Words([.. words]), start);
        tokens.Fail("',' or ']'");
        return null;
    }

    private Expression? Minus()
    {
        var start = tokens.Current.Offset;
        if (!tokens.TakeSymbol("-")) return Primary();
        return Deeper(Minus) is { } operand ? Span(new Expression.Unary(UnaryOperator.Minus, operand), start) : null;
    }

    private Expression? Primary()
    {
        var token = tokens.Current;
        switch (token.Kind)
        {
            case TokenKind.Figure:
                tokens.Take();
                return Span(new Expression.Literal(token.Value), token.Offset);
            case TokenKind.Name when token.Text is not ("or" or "and" or "not" or "is" or "is_not"):
                return NamePathOrCall();
            case TokenKind.Symbol when token.Text == "(":
                tokens.Take();
                if (Deeper(Parse) is not { } inner) return null;
                if (tokens.TakeSymbol(")")) return inner;
                tokens.Fail("')'");
                return null;
            default:
                var before = token.Offset > 0 && tokens.Previous.End <= token.Offset && tokens.Previous.Offset < token.Offset;
                tokens.Fail(before ? $"a value after {Messages.Quote(tokens.Previous.Text)}" : "a value");
                return null;
        }
    }

    private Expression? NamePathOrCall()
    {
        if (Name(tokens, "a name") is not { } name) return null;
        if (tokens.TakeSymbol(".")) return PathFrom(name);
        if (!tokens.TakeSymbol("(")) return name;
        var arguments = new List<Expression>();
        while (!tokens.IsSymbol(")"))
        {
            if (Deeper(Parse) is not { } argument) return null;
            arguments.Add(argument);
            if (tokens.TakeSymbol(",")) continue;
            if (tokens.IsSymbol(")")) break;
            tokens.Fail("',' or ')'");
            return null;
        }

        tokens.Take();
        return Span(new Expression.Call(name, [.. arguments]), name.Offset);
    }

    private Expression.Path? PathFrom(Expression.Name owner) =>
        Name(tokens, $"a fact or an aspect after '{owner.Text}.'") is { } member ? Span(new Expression.Path(owner, member), owner.Offset) : null;

    private BinaryOperator? Operator(int level) => tokens.Current.Kind is TokenKind.Name or TokenKind.Symbol
        ? Operators.Find(tokens.Current.Text, level)
        : null;

    private Expression? Deeper(Func<Expression?> parse)
    {
        if (_depth == MostLevels)
        {
            tokens.Fail(Messages.NestedTooDeep(tokens.Snippet.SpanOf(tokens.Current.Offset, tokens.Current.Length), MostLevels));
            return null;
        }

        _depth++;
        var node = parse();
        _depth--;
        return node;
    }

    private T Span<T>(T node, int start)
        where T : Expression => node with { Offset = start, Length = tokens.Previous.End - start };
}
