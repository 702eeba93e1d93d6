namespace ProcedureRules.Language.Syntax;

/// <summary>A cell of a decision table that selects its row by one input.</summary>
internal abstract record Cell : SyntaxNode
{
    private Cell() { }

    /// <summary><c>-</c>: any value.</summary>
    public sealed record Any : Cell;

    /// <summary><c>light | heavy</c>.</summary>
    public sealed record Words(NodeList<Expression.Name> Items) : Cell;

    /// <summary><c>&lt; 2 in</c>.</summary>
    public sealed record Compares(BinaryOperator Operator, Expression.Literal Bound) : Cell;

    /// <summary><c>1 in .. 2 in</c>, the lower end in, the upper end out; a single figure is that figure.</summary>
    public sealed record Within(Expression.Literal Range) : Cell;
}
