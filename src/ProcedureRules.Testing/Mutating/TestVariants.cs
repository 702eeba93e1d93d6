using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Other conditions and values in the place of one: turned round, with a figure moved, or in another unit.</summary>
internal static class TestVariants
{
    /// <summary>The opposite.</summary>
    public static Test? Negated(Test test) => test.Node is { } node ? Compiled.Test($"not ({test.Text})", test.Span, new Negation(node)) : null;

    /// <summary>The condition with one of its figures changed: the figure, what it becomes, the condition.</summary>
    public static IEnumerable<(string Figure, string Moved, Test Other)> Moved(Test test)
    {
        if (test.Node is not { } root) yield break;
        foreach (var comparison in root.All().OfType<Comparison>())
        {
            foreach (var (figure, moved, other) in Moved(comparison, test.Text))
                if (Replace(root, comparison, other) is { } node) yield return (figure, moved, Compiled.Test(test.Text, test.Span, node));
        }
    }

    /// <summary>A value that is a figure, changed.</summary>
    public static IEnumerable<(string Figure, string Moved, ValueExpression Other)> Moved(ValueExpression? value)
    {
        if (value?.Node is not ConstantQuantity constant || WrittenFigure.In(value.Text, constant.Value) is not { } figure) yield break;
        foreach (var moved in Variants(figure))
            yield return (figure.Text, moved.Text, Compiled.Value(value.Text, value.Span, value.Type, new ConstantQuantity(moved.Value.As(constant.Dimension))));
    }

    private static IEnumerable<(string Figure, string Moved, TruthNode Other)> Moved(Comparison comparison, string text) => comparison switch
    {
        QuantityComparison { Right: ConstantQuantity bound } written => Moved(bound.Value, text, value => new QuantityComparison(written.Syntax, written.Symbol, written.Left, new ConstantQuantity(value))),
        QuantityComparison { Left: ConstantQuantity bound } written => Moved(bound.Value, text, value => new QuantityComparison(written.Syntax, written.Symbol, new ConstantQuantity(value), written.Right)),
        RangeComparison written => Moved(written.Range, text, value => new RangeComparison(written.Syntax, written.Operand, value)),
        _ => [],
    };

    private static IEnumerable<(string Figure, string Moved, TruthNode Other)> Moved(Quantity value, string text, Func<Quantity, TruthNode> make)
    {
        if (WrittenFigure.In(text, value) is not { } figure) yield break;
        foreach (var moved in Variants(figure))
        {
            var next = moved.Value.As(value.Dimension);
            // A cell that names a range is compared end by end.
            if (value.IsPoint && !next.IsPoint) next = Quantity.Point(value.Low == figure.Value.As(value.Dimension).Low ? next.Low : next.High, value.Dimension);
            if (next != value) yield return (figure.Text, moved.Text, make(next));
        }
    }

    private static IEnumerable<WrittenFigure> Variants(WrittenFigure figure) => figure.InOtherUnit() is { } other ? figure.Moved().Append(other) : figure.Moved();

    private static TruthNode? Replace(TruthNode root, TruthNode old, TruthNode other) => root switch
    {
        _ when ReferenceEquals(root, old) => other,
        Conjunction { Children: [TruthNode left, TruthNode right] } => Either(left, right, old, other, (a, b) => new Conjunction(a, b)),
        Disjunction { Children: [TruthNode left, TruthNode right] } => Either(left, right, old, other, (a, b) => new Disjunction(a, b)),
        Negation { Children: [TruthNode operand] } => Replace(operand, old, other) is { } inner ? new Negation(inner) : null,
        _ => null,
    };

    private static TruthNode? Either(TruthNode left, TruthNode right, TruthNode old, TruthNode other, Func<TruthNode, TruthNode, TruthNode> make) =>
        Replace(left, old, other) is { } first ? make(first, right)
        : Replace(right, old, other) is { } second ? make(left, second)
        : null;
}
