using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Checks <c>x is y</c>: a figure, a range that is written out, a word, some words, or another fact of the same words.</summary>
internal sealed class IsChecker(Resolver names, ExpressionChecker expressions)
{
    public TruthNode? Check(Expression.Is test)
    {
        if (expressions.Check(test.Left, null) is not { } left) return null;
        var node = left switch
        {
            QuantityNode quantity => OfQuantity(test, quantity),
            WordsNode words => OfWord(test, words),
            TruthNode truth => OfWord(test, new TruthWords(truth)),
            _ => Refuse(Messages.TextCompared(names.Span(test.Left))),
        };
        return node is not null && test.IsNegated ? new Negation(node) : node;
    }

    private Comparison? Refuse(Diagnostic diagnostic)
    {
        names.Report(diagnostic);
        return null;
    }

    private Comparison? OfQuantity(Expression.Is test, QuantityNode left)
    {
        if (test.Right is Expression.Words) return Refuse(Messages.WordsForFigure(names.Span(test.Right), Phrases.Of(left)));
        if (expressions.Check(test.Right, null) is not { } side) return null;
        if (side is not QuantityNode right || !DimensionRules.AreComparable(left.Dimension, right.Dimension))
        {
            expressions.Mismatch(test, "compare", (left, test.Left), (side, test.Right));
            return null;
        }

        return right is ConstantQuantity { Value.IsPoint: false } range
            ? new RangeComparison(test, left, range.Value)
            : new QuantityComparison(test, "is", left, right);
    }

    private Comparison? OfWord(Expression.Is test, WordsNode left)
    {
        if (test.Right is Expression.Words list)
        {
            var bits = 0UL;
            var isWhole = true;
            foreach (var item in list.Items)
            {
                if (expressions.Check(item, left.Type) is ConstantWords word && Agrees(test, left, word)) bits |= word.Words;
                else isWhole = false;
            }

            return isWhole ? new WordComparison(test, left, bits) : null;
        }

        if (expressions.Check(test.Right, left.Type) is not { } right || !Agrees(test, left, right)) return null;
        var words = right as WordsNode ?? new TruthWords((TruthNode)right);
        return words is ConstantWords constant ? new WordComparison(test, left, constant.Words) : new WordEquality(test, left, words);
    }

    private bool Agrees(Expression.Is test, WordsNode left, Node right)
    {
        if (right is WordsNode words && ExpressionChecker.AreSameWords(left.Type, words.Type)) return true;
        if (right is TruthNode && left.Type.IsYesNo) return true;
        expressions.Mismatch(test, "compare", (left, test.Left), (right, test.Right));
        return false;
    }
}
