using FsCheck;
using FsCheck.Fluent;
using ProcedureRules.Language;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Language;

/// <summary>Random trees and random texts.</summary>
internal static class SyntaxGenerators
{
    private static readonly string[] Names = ["oil_pan", "a", "drop", "one_piece", "s", "about", "in", "on", "x2"];

    private static readonly string[] Figures =
        ["2 in", "1 1/4 in", "-5..10 psi", "0.020..0.025 in", "about 15 thou", "dT 20 degF", "80 degF", "dP -3 psi", "3", "-0.5", "2 lb 14 oz", "45 psi", "8 h"];

    private static readonly string[] Pieces =
        ["oil_pan", ".", "drop", " ", "<", "<=", "is", " not ", " and ", " or ", "(", ")", "[", "]", ",", "2 in", "-", "+", "*", "/", "min(", "if(", "job ", " on ", "s ", "leaves ", "{", "}", "..", "1/0", "about ", "dT ", "\u2212", "\ud83d", "|", "|", "yes", "demanded(", "at_start(", "\n"];

    /// <summary>An expression tree.</summary>
    public static Gen<Expression> Expression { get; } = Gen.Sized(size => OfSize(Math.Min(size, 24)));

    /// <summary>An entry of <c>when</c>.</summary>
    public static Gen<Condition> Condition { get; } = Gen.OneOf<Condition>(
        from verb in Gen.Elements(PredicateSorts(0))
        from step in Name
        from part in Name
        from aspect in Name
        from state in Name
        select (Condition)new Condition.Changes(step, verb, new(part, aspect), state),
        from verb in Gen.Elements(PredicateSorts(1)) from step in Name from part in Name select (Condition)new Condition.Meets(step, verb, part),
        from verb in Gen.Elements(PredicateSorts(2)) from step in Name from word in Name select (Condition)new Condition.Describes(step, verb, word),
        from job in Name from part in Gen.OrNull(Name) select (Condition)new Condition.Asks(job, part),
        from expression in Expression select (Condition)new Condition.Holds(expression));

    /// <summary>Texts made of pieces of the language, and texts of any characters.</summary>
    public static Gen<string> Text { get; } = Gen.OneOf(
        Gen.Choose(0, 30).SelectMany(count => Gen.Elements(Pieces).ListOf(count)).Select(pieces => string.Concat(pieces)),
        ArbMap.Default.GeneratorFor<string>().Select(text => text ?? ""));

    private static Gen<Expression.Name> Name => Gen.Elements(Names).Select(text => new Expression.Name(text));

    private static Gen<Expression> OfSize(int size)
    {
        var leaf = Gen.OneOf(
            Gen.Elements(Figures).Select(text => (Expression)new Expression.Literal(Quantity.Read(text))),
            Name.Select(name => (Expression)name),
            from owner in Name from member in Name select (Expression)new Expression.Path(owner, member));
        if (size <= 0) return leaf;
        var half = OfSize(size / 2);
        return Gen.OneOf(
            leaf,
            from op in Gen.Elements(Enum.GetValues<BinaryOperator>()) from left in half from right in half select (Expression)new Expression.Binary(op, left, right),
            from op in Gen.Elements(Enum.GetValues<UnaryOperator>()) from operand in half select (Expression)new Expression.Unary(op, operand),
            from name in Name from count in Gen.Choose(0, 3) from arguments in half.ListOf(count) select (Expression)new Expression.Call(name, [.. arguments]),
            from left in half from negated in Gen.Elements(true, false) from right in half select (Expression)new Expression.Is(left, negated, right),
            from left in half
            from negated in Gen.Elements(true, false)
            from count in Gen.Choose(1, 3)
            from words in Name.ListOf(count)
            select (Expression)new Expression.Is(left, negated, new Expression.Words([.. words])));
    }

    private static PredicateSort[] PredicateSorts(int group) => group switch
    {
        0 => [PredicateSort.Leaves, PredicateSort.Reaches],
        1 => [PredicateSort.On, PredicateSort.Touches, PredicateSort.Moves],
        _ => [PredicateSort.Does, PredicateSort.Place, PredicateSort.Energy, PredicateSort.Phase],
    };
}
