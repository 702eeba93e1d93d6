using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Syntax;

/// <summary>An expression as written, before any name is looked up.</summary>
internal abstract record Expression : SyntaxNode
{
    private Expression() { }

    /// <summary>A figure with its unit: <c>1 1/4 in</c>.</summary>
    public sealed record Literal(Quantity Value) : Expression;

    /// <summary>A bare name: a variable, a kind or a word of a fact's type.</summary>
    public sealed record Name(string Text) : Expression;

    /// <summary>A fact or an aspect of a part: <c>oil_pan.place</c>.</summary>
    public sealed record Path(Name Owner, Name Member) : Expression;

    /// <summary>A function, relation, operation or cause with its arguments.</summary>
    public sealed record Call(Name Function, NodeList<Expression> Arguments) : Expression;

    /// <summary><c>not x</c> or <c>-x</c>.</summary>
    public sealed record Unary(UnaryOperator Operator, Expression Operand) : Expression;

    /// <summary>Two expressions with an operator between them.</summary>
    public sealed record Binary(BinaryOperator Operator, Expression Left, Expression Right) : Expression;

    /// <summary><c>x is y</c>, <c>x is not [a, b]</c>.</summary>
    public sealed record Is(Expression Left, bool IsNegated, Expression Right) : Expression;

    /// <summary>Words in brackets, right of <c>is</c>.</summary>
    public sealed record Words(NodeList<Name> Items) : Expression;
}
