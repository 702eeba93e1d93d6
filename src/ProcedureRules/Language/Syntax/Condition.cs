namespace ProcedureRules.Language.Syntax;

/// <summary>One entry of <c>when</c> as written.</summary>
internal abstract record Condition : SyntaxNode
{
    private Condition() { }

    /// <summary><c>s leaves x.aspect STATE</c>, <c>s reaches x.aspect STATE</c>.</summary>
    public sealed record Changes(Expression.Name Step, PredicateSort Verb, Expression.Path Aspect, Expression.Name State) : Condition;

    /// <summary><c>s on x</c>, <c>s touches x</c>, <c>s moves x</c>.</summary>
    public sealed record Meets(Expression.Name Step, PredicateSort Verb, Expression.Name Part) : Condition;

    /// <summary><c>s does OPERATION</c>, <c>s place PLACE</c>, <c>s energy ENERGY</c>, <c>s phase PHASE</c>.</summary>
    public sealed record Describes(Expression.Name Step, PredicateSort Verb, Expression.Name Word) : Condition;

    /// <summary><c>job NAME</c>, <c>job NAME on x</c>.</summary>
    public sealed record Asks(Expression.Name Job, Expression.Name? On) : Condition;

    /// <summary>Any truth-valued expression.</summary>
    public sealed record Holds(Expression Expression) : Condition;
}
