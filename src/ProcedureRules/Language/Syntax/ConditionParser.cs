namespace ProcedureRules.Language.Syntax;

/// <summary>Parses what stands in <c>when</c> besides plain expressions, and the order of two steps.</summary>
internal static class ConditionParser
{
    /// <summary>The verbs of conditions on a step, as written.</summary>
    public static readonly IReadOnlyDictionary<string, PredicateSort> Verbs = new Dictionary<string, PredicateSort>(StringComparer.Ordinal)
    {
        ["leaves"] = PredicateSort.Leaves,
        ["reaches"] = PredicateSort.Reaches,
        ["on"] = PredicateSort.On,
        ["touches"] = PredicateSort.Touches,
        ["moves"] = PredicateSort.Moves,
        ["does"] = PredicateSort.Does,
        ["place"] = PredicateSort.Place,
        ["energy"] = PredicateSort.Energy,
        ["phase"] = PredicateSort.Phase,
    };

    public static Condition? Parse(TokenStream tokens)
    {
        var start = tokens.Current.Offset;
        var condition = tokens switch
        {
            { Current.Kind: TokenKind.Name } when tokens.IsWord("job") && tokens.Ahead(1).Kind == TokenKind.Name => Job(tokens),
            { Current: { Kind: TokenKind.Name, Text: not "not" } } when tokens.Ahead(1) is { Kind: TokenKind.Name } verb && Verbs.TryGetValue(verb.Text, out var sort) => OfStep(tokens, sort),
            _ => new ExpressionParser(tokens).Parse() is { } expression ? new Condition.Holds(expression) : null,
        };
        return condition is null ? null : condition with { Offset = start, Length = tokens.Previous.End - start };
    }

    public static OrderSyntax? ParseOrder(TokenStream tokens)
    {
        var start = tokens.Current.Offset;
        if (ExpressionParser.Name(tokens, "a step, as in 's before t'") is not { } first) return null;
        if (!tokens.TakeWord("before"))
        {
            tokens.Fail("'before', as in 's before t'");
            return null;
        }

        return ExpressionParser.Name(tokens, "a step after 'before'") is { } second
            ? new(first, second) { Offset = start, Length = tokens.Previous.End - start }
            : null;
    }

    private static Condition.Asks? Job(TokenStream tokens)
    {
        tokens.Take();
        if (ExpressionParser.Name(tokens, "the name of a job") is not { } job) return null;
        if (!tokens.TakeWord("on")) return new(job, null);
        return ExpressionParser.Name(tokens, "a part after 'on'") is { } part ? new(job, part) : null;
    }

    private static Condition? OfStep(TokenStream tokens, PredicateSort sort)
    {
        if (ExpressionParser.Name(tokens, "a step") is not { } step) return null;
        var verb = tokens.Take().Text;
        switch (sort)
        {
            case PredicateSort.Leaves or PredicateSort.Reaches:
                if (new ExpressionParser(tokens).ParsePath() is not { } aspect) return null;
                return ExpressionParser.Name(tokens, $"a state of '{aspect.Owner.Text}.{aspect.Member.Text}'") is { } state
                    ? new Condition.Changes(step, sort, aspect, state)
                    : null;
            case PredicateSort.On or PredicateSort.Touches or PredicateSort.Moves:
                return ExpressionParser.Name(tokens, $"a part after '{verb}'") is { } part ? new Condition.Meets(step, sort, part) : null;
            default:
                var what = sort == PredicateSort.Does ? "an operation" : sort == PredicateSort.Energy ? "an energy" : $"a {verb}";
                return ExpressionParser.Name(tokens, $"{what} after '{verb}'") is { } word ? new Condition.Describes(step, sort, word) : null;
        }
    }
}
