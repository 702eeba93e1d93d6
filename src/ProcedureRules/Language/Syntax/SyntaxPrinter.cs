using System.Text;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Syntax;

/// <summary>Prints trees so that parsing gives an equal tree back, with no bracket more than that takes.</summary>
internal static class SyntaxPrinter
{
    public static string Print(Expression expression)
    {
        var text = new StringBuilder();
        Write(text, expression, Operators.LoosestLevel);
        return text.ToString();
    }

    public static string Print(Condition condition) => condition switch
    {
        Condition.Changes c => $"{c.Step.Text} {Verb(c.Verb)} {Print(c.Aspect)} {c.State.Text}",
        Condition.Meets c => $"{c.Step.Text} {Verb(c.Verb)} {c.Part.Text}",
        Condition.Describes c => $"{c.Step.Text} {Verb(c.Verb)} {c.Word.Text}",
        Condition.Asks { On: null } c => $"job {c.Job.Text}",
        Condition.Asks c => $"job {c.Job.Text} on {c.On!.Text}",
        Condition.Holds c => Print(c.Expression),
        _ => "",
    };

    public static string Print(TemplateSyntax template)
    {
        var text = new StringBuilder();
        foreach (var part in template.Parts)
        {
            if (part is TemplatePart.Plain plain) text.Append(plain.Text.Replace("{", "{{").Replace("}", "}}"));
            else if (part is TemplatePart.Hole hole) text.Append('{').Append(Print(hole.Expression)).Append('}');
        }

        return text.ToString();
    }

    public static string Print(Cell cell) => cell switch
    {
        Cell.Words words => string.Join(" | ", words.Items.Select(word => word.Text)),
        Cell.Compares compares => $"{Operators.Text(compares.Operator)} {compares.Bound.Value.ToString(UnitSystem.Si)}",
        Cell.Within within => within.Range.Value.ToString(UnitSystem.Si),
        _ => "-",
    };

    private static string Verb(PredicateSort sort) => ConditionParser.Verbs.First(verb => verb.Value == sort).Key;

    private static void Write(StringBuilder text, Expression expression, int level)
    {
        var own = LevelOf(expression);
        if (own < level) text.Append('(');
        switch (expression)
        {
            case Expression.Literal literal:
                text.Append(literal.Value.ToString(UnitSystem.Si));
                break;
            case Expression.Name name:
                text.Append(name.Text);
                break;
            case Expression.Path path:
                text.Append(path.Owner.Text).Append('.').Append(path.Member.Text);
                break;
            case Expression.Call call:
                text.Append(call.Function.Text);
                WriteList(text, '(', call.Arguments, ')');
                break;
            case Expression.Words words:
                WriteList(text, '[', words.Items, ']');
                break;
            case Expression.Unary { Operator: UnaryOperator.Not } not:
                text.Append("not ");
                Write(text, not.Operand, own);
                break;
            case Expression.Unary minus:
                text.Append('-');
                // A minus before a figure would become part of it.
                Write(text, minus.Operand, minus.Operand is Expression.Literal ? Operators.PrimaryLevel + 1 : own);
                break;
            case Expression.Binary binary:
                Write(text, binary.Left, Operators.IsComparison(binary.Operator) ? own + 1 : own);
                text.Append(' ').Append(Operators.Text(binary.Operator)).Append(' ');
                Write(text, binary.Right, own + 1);
                break;
            case Expression.Is test:
                Write(text, test.Left, own + 1);
                text.Append(test.IsNegated ? " is not " : " is ");
                Write(text, test.Right, test.Right is Expression.Words ? own : own + 1);
                break;
        }

        if (own < level) text.Append(')');
    }

    private static void WriteList(StringBuilder text, char open, IReadOnlyList<Expression> items, char close)
    {
        text.Append(open);
        for (var i = 0; i < items.Count; i++)
        {
            if (i > 0) text.Append(", ");
            Write(text, items[i], Operators.LoosestLevel);
        }

        text.Append(close);
    }

    private static int LevelOf(Expression expression) => expression switch
    {
        Expression.Binary binary => Operators.Level(binary.Operator),
        Expression.Is => Operators.ComparisonLevel,
        Expression.Unary { Operator: UnaryOperator.Not } => Operators.NotLevel,
        Expression.Unary => Operators.UnaryLevel,
        _ => Operators.PrimaryLevel,
    };
}
