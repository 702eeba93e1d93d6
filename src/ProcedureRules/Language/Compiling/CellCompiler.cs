using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles a cell to the condition that selects its row.</summary>
internal sealed class CellCompiler(CompilerContext context, RuleParts rule)
{
    public TableCell? Compile(TableInput input, Snippet written)
    {
        if (Parser.Cell(written, context.Bag) is not { } cell) return null;
        switch (cell)
        {
            case Cell.Words words when input.Fact.Type.IsWords:
                return Words(input, written, words);
            case Cell.Compares compares when input.Fact.Type.IsQuantity:
                return Fits(input, written, compares.Bound) is { } bound ? Compares(input, written, compares.Operator, bound) : null;
            case Cell.Within within when input.Fact.Type.IsQuantity:
                return Fits(input, written, within.Range) is { } range ? Within(input, written, range) : null;
            case Cell.Any:
                return TableCell.Any;
            default:
                var due = Phrases.Of(input.Fact.Type);
                context.Bag.Add(Messages.WrongCell(written.Span, input.Fact.ToString(), due, input.Fact.Span));
                return null;
        }
    }

    private TableCell? Words(TableInput input, Snippet written, Cell.Words cell)
    {
        var bits = 0UL;
        foreach (var word in cell.Items)
        {
            var index = input.Fact.Type.Words.ToList().IndexOf(word.Text);
            if (index < 0)
            {
                context.Bag.Add(Messages.UnknownWord(written.SpanOf(word.Offset, word.Length), word.Text, input.Fact.Type.Words));
                return null;
            }

            bits |= 1UL << index;
        }

        Add(input, written, syntax => new WordComparison(syntax, new FactWords(input.Slot, input.Fact), bits));
        return TableCell.Any with { Words = bits };
    }

    private Quantity? Fits(TableInput input, Snippet written, Expression.Literal literal)
    {
        var due = input.Fact.Type.Dimension.GetValueOrDefault();
        if (DimensionRules.Accepts(due, literal.Value.Dimension)) return literal.Value.As(due);
        context.Bag.Add(Messages.WrongValue(
            written.SpanOf(literal.Offset, literal.Length), Messages.Quote(input.Fact.ToString()), Dimensions.Phrase(due), Dimensions.Phrase(literal.Value.Dimension), input.Fact.Span));
        return null;
    }

    private TableCell? Compares(TableInput input, Snippet written, BinaryOperator op, Quantity bound)
    {
        if (!bound.IsPoint)
        {
            context.Bag.Add(Messages.CellBound(written.Span));
            return null;
        }

        Compare(input, written, Operators.Text(op), bound);
        return op switch
        {
            BinaryOperator.Less => TableCell.Any with { High = bound.High, IsHighOut = true },
            BinaryOperator.LessOrEqual => TableCell.Any with { High = bound.High },
            BinaryOperator.Greater => TableCell.Any with { Low = bound.Low, IsLowOut = true },
            _ => TableCell.Any with { Low = bound.Low },
        };
    }

    // The upper end of a range is out, since the next row starts there; the last row takes the end of what can occur.
    private TableCell Within(TableInput input, Snippet written, Quantity range)
    {
        if (range.IsPoint)
        {
            Compare(input, written, "is", range);
            return TableCell.Any with { Low = range.Low, High = range.High };
        }

        var occurs = input.Fact.Plausible ?? Quantity.Anything(range.Dimension);
        var isLast = range.High >= occurs.High;
        var isFirst = range.Low <= occurs.Low;
        if (isFirst && !isLast) Compare(input, written, "<", Quantity.Point(range.High, range.Dimension));
        else if (!isFirst && isLast) Compare(input, written, ">=", Quantity.Point(range.Low, range.Dimension));
        else if (!isFirst) Add(input, written, syntax => new Conjunction(
            Comparison(syntax, input, ">=", Quantity.Point(range.Low, range.Dimension)), Comparison(syntax, input, "<", Quantity.Point(range.High, range.Dimension))));
        return TableCell.Any with { Low = range.Low, High = range.High, IsHighOut = !isLast };
    }

    private void Compare(TableInput input, Snippet written, string symbol, Quantity bound) =>
        Add(input, written, syntax => Comparison(syntax, input, symbol, bound));

    private static QuantityComparison Comparison(Expression syntax, TableInput input, string symbol, Quantity bound) =>
        new(syntax, symbol, new FactQuantity(input.Slot, input.Fact), new ConstantQuantity(bound));

    private void Add(TableInput input, Snippet written, Func<Expression, TruthNode> make)
    {
        var node = make(new Expression.Name(written.Text) { Length = written.Text.Length });
        var names = new Resolver(context, rule.Scope, written);
        rule.Add(Compiled.Test($"{input.Written.Text} {written.Text}", written.Span, node), node, names);
    }
}
