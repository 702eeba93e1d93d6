using ProcedureRules.Language.Syntax;

namespace ProcedureRules.Language.Compiling;

/// <summary>Puts a condition into words, for a check that its pack gave no text.</summary>
internal static class Describer
{
    public static TemplateSyntax Describe(Expression expression) => new([.. Parts(expression)]);

    private static IEnumerable<TemplatePart> Parts(Expression expression) => expression switch
    {
        Expression.Path path => [Hole(path.Owner), Plain($" {path.Member.Text.Replace('_', ' ')}")],
        Expression.Name name => [Plain(name.Text.Replace('_', ' '))],
        Expression.Words words => [Plain(string.Join(" or ", words.Items.Select(word => word.Text.Replace('_', ' '))))],
        Expression.Unary { Operator: UnaryOperator.Not } not => [Plain("not: "), .. Parts(not.Operand)],
        Expression.Unary minus => [Plain("-"), .. Parts(minus.Operand)],
        Expression.Binary binary => [.. Parts(binary.Left), Plain($" {Word(binary.Operator)} "), .. Parts(binary.Right)],
        Expression.Is { Right: Expression.Literal { Value.IsPoint: false } } within =>
            [.. Parts(within.Left), Plain(within.IsNegated ? " outside " : " within "), .. Parts(within.Right)],
        Expression.Is test => [.. Parts(test.Left), Plain(test.IsNegated ? " not " : " "), .. Parts(test.Right)],
        Expression.Call call => [Plain($"{call.Function.Text.Replace('_', ' ')} ("), .. Listed(call.Arguments), Plain(")")],
        _ => [Hole(expression)],
    };

    private static IEnumerable<TemplatePart> Listed(NodeList<Expression> arguments) => arguments
        .SelectMany((argument, i) => i == 0 ? Parts(argument) : Parts(argument).Prepend(Plain(", ")));

    private static TemplatePart.Plain Plain(string text) => new(text);

    private static TemplatePart.Hole Hole(Expression expression) => new(expression);

    private static string Word(BinaryOperator op) => op switch
    {
        BinaryOperator.Less => "less than",
        BinaryOperator.LessOrEqual => "at most",
        BinaryOperator.Greater => "more than",
        BinaryOperator.GreaterOrEqual => "at least",
        _ => Operators.Text(op),
    };
}
