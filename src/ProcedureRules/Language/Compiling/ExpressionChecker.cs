using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Gives every expression its type, or says why it has none; both sides of a mismatch are named.</summary>
internal sealed class ExpressionChecker(Resolver names)
{
    /// <summary>An expression where a condition is due.</summary>
    public TruthNode? Truth(Expression expression) => Check(expression, FactType.YesNo) is { } node ? AsTruth(node, expression) : null;

    /// <summary>An expression where a quantity is due.</summary>
    public QuantityNode? Quantity(Expression expression)
    {
        var node = Check(expression, null);
        if (node is null or QuantityNode) return node as QuantityNode;
        names.Report(Messages.QuantityDue(names.Span(expression), Phrases.Of(node)));
        return null;
    }

    /// <summary>Any expression; bare words are words of the type that is due.</summary>
    public Node? Check(Expression expression, FactType? due) => expression switch
    {
        Expression.Literal literal => new ConstantQuantity(literal.Value),
        Expression.Name name => Word(name, due),
        Expression.Path path => Fact(path),
        Expression.Call call => new CallChecker(names, this).Check(call, due),
        Expression.Unary { Operator: UnaryOperator.Not } not => Truth(not.Operand) is { } operand ? new Negation(operand) : null,
        Expression.Unary minus => Negative(minus),
        Expression.Binary { Operator: BinaryOperator.And or BinaryOperator.Or } binary => Connective(binary),
        Expression.Binary binary when Operators.IsComparison(binary.Operator) => Compare(binary),
        Expression.Binary binary => Calculate(binary),
        Expression.Is test => new IsChecker(names, this).Check(test),
        _ => null, // a list of words, which the parser takes only right of 'is'
    };

    public static bool AreSameWords(FactType a, FactType b) => ReferenceEquals(a, b) || (a.IsWords && a.Words.SequenceEqual(b.Words));

    private TruthNode? AsTruth(Node node, Expression expression)
    {
        switch (node)
        {
            case TruthNode truth:
                return truth;
            case WordsNode { Type.IsYesNo: true } words:
                return new YesNoTruth(words);
            default:
                names.Report(Messages.ConditionDue(names.Span(expression), Phrases.Of(node)));
                return null;
        }
    }

    private ConstantWords? Word(Expression.Name name, FactType? due)
    {
        if (due is { IsWords: true } && IndexOf(due, name.Text) is >= 0 and var index) return new ConstantWords(due, 1UL << index);
        if (name.Text is "yes" or "no") return new ConstantWords(FactType.YesNo, name.Text == "yes" ? 2UL : 1UL);
        if (names.Scope.Find(name.Text) is not null || names.Context.Vocabulary.Kinds.ContainsKey(name.Text))
            names.Report(Messages.PartAsValue(names.Span(name), name.Text));
        else if (due is { IsWords: true, IsYesNo: false })
            names.Report(Messages.UnknownWord(names.Span(name), name.Text, due.Words));
        else if (names.Context.Vocabulary.Facts.Any(fact => fact.Type.Words.Contains(name.Text)))
            names.Report(Messages.WordAlone(names.Span(name), name.Text));
        else
            names.Unknown(name, "value", names.Scope.Variables.Select(v => v.Name).Concat(names.Context.Vocabulary.Kinds.Keys));
        return null;
    }

    private static int IndexOf(FactType type, string word)
    {
        for (var i = 0; i < type.Words.Count; i++)
            if (type.Words[i] == word) return i;
        return -1;
    }

    private Node? Fact(Expression.Path path)
    {
        if (names.Member(path) is not { } member) return null;
        if (member.Fact is { } fact)
            return fact.IsDemand && fact.Type.IsQuantity ? new DemandedQuantity(member.Part.Slot, fact, isMost: false)
                : fact.Type.IsQuantity ? new FactQuantity(member.Part.Slot, fact)
                : fact.Type.IsWords ? new FactWords(member.Part.Slot, fact)
                : new FactText(member.Part.Slot, fact);
        names.Report(Messages.StateInExpression(names.Span(path), Resolver.PathText(path)));
        return null;
    }

    private TruthNode? Connective(Expression.Binary binary)
    {
        // Both sides are looked at even if the first is wrong: all mistakes are told at once.
        var (left, right) = (Truth(binary.Left), Truth(binary.Right));
        if (left is null || right is null) return null;
        return binary.Operator == BinaryOperator.And ? new Conjunction(left, right) : new Disjunction(left, right);
    }

    private QuantityComparison? Compare(Expression.Binary binary)
    {
        var (left, right) = (Quantity(binary.Left), Quantity(binary.Right));
        if (left is null || right is null) return null;
        if (DimensionRules.AreComparable(left.Dimension, right.Dimension))
            return new QuantityComparison(binary, Operators.Text(binary.Operator), left, right);
        Mismatch(binary, "compare", (left, binary.Left), (right, binary.Right));
        return null;
    }

    private Arithmetic? Calculate(Expression.Binary binary)
    {
        var (left, right) = (Quantity(binary.Left), Quantity(binary.Right));
        if (left is null || right is null) return null;
        var (a, b) = (left.Dimension, right.Dimension);
        (Dimension? Result, Func<Quantity, Quantity, Quantity> Operation) found = binary.Operator switch
        {
            BinaryOperator.Add => (DimensionRules.Add(a, b), (x, y) => x + y),
            BinaryOperator.Subtract => (DimensionRules.Subtract(a, b), (x, y) => x - y),
            BinaryOperator.Multiply => (DimensionRules.Multiply(a, b), (x, y) => x * y),
            _ => (DimensionRules.Divide(a, b), (x, y) => x / y),
        };
        if (found.Result is { } result) return new Arithmetic(found.Operation, left, right, result);
        Mismatch(binary, Operators.Text(binary.Operator), (left, binary.Left), (right, binary.Right));
        return null;
    }

    private Converted? Negative(Expression.Unary minus)
    {
        if (Quantity(minus.Operand) is not { } operand) return null;
        if (DimensionRules.Negate(operand.Dimension) is not null) return new Converted(static x => -x, operand);
        names.Report(Messages.NoSign(names.Span(minus), Phrases.Of(operand)));
        return null;
    }

    /// <summary>Says that two sides do not go together; the caret stands between them, where the operator is.</summary>
    public void Mismatch(Expression whole, string operation, (Node Node, Expression Side) left, (Node Node, Expression Side) right)
    {
        var why = left.Node is QuantityNode a && right.Node is QuantityNode b
            ? DimensionRules.WhyNot(operation, a.Dimension, b.Dimension)
            : $"{Phrases.Of(left.Node)} cannot be compared with {Phrases.Of(right.Node)}";
        var between = names.Snippet.Text.AsSpan(left.Side.End, Math.Max(0, right.Side.Offset - left.Side.End));
        var blanks = between.Length - between.TrimStart([' ', ')', '\n', '\t']).Length;
        var length = between.Trim([' ', '(', ')', '\n', '\t']).Length;
        var span = length > 0 ? names.Snippet.SpanOf(left.Side.End + blanks, length) : names.Span(whole);
        names.Report(Messages.Mismatch(span, why, Phrases.Of(left.Node), Phrases.Of(right.Node), DeclaredAt(left.Node), DeclaredAt(right.Node)));
    }

    private static (SourceSpan Span, string Name)? DeclaredAt(Node node) => node switch
    {
        FactQuantity { Fact: var fact } => (fact.Span, fact.ToString()),
        FactWords { Fact: var fact } => (fact.Span, fact.ToString()),
        DemandedQuantity { Fact: var fact } => (fact.Span, fact.ToString()),
        _ => null,
    };
}
