using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Checks what gathers values from all parts of a kind; inside, the name of the kind stands for each of them in turn.</summary>
internal sealed class AggregateChecker(Resolver names, ExpressionChecker expressions)
{
    public Node? Check(Expression.Call call)
    {
        var function = call.Function.Text;
        var first = function == "count" ? 1 : 2; // where the condition stands
        if (call.Arguments.Count != first && call.Arguments.Count != first + 1)
        {
            names.Report(Messages.ArgumentCount(names.Span(call), function, $"{Messages.Count(first, "argument")} and a condition, or none", call.Arguments.Count));
            return null;
        }

        if (call.Arguments[0] is not Expression.Name name)
        {
            names.Report(Messages.KindDue(names.Span(call.Arguments[0]), function, function == "count" ? "count(engine_mount)" : $"{function}(starter, starter.mass)"));
            return null;
        }

        return names.Kind(name) is { } kind ? Check(call, kind, first) : null;
    }

    private Node? Check(Expression.Call call, Kind kind, int first)
    {
        names.Scope.Enter(kind);
        var value = first == 1 ? new ConstantQuantity(Quantity.Point(1, Dimension.Count)) : expressions.Quantity(call.Arguments[1]);
        var hasCondition = call.Arguments.Count > first;
        var condition = hasCondition ? expressions.Truth(call.Arguments[first]) : null;
        names.Scope.Leave();
        if (value is null || (hasCondition && condition is null)) return null;
        var members = new Members(kind, value, condition);
        switch (call.Function.Text)
        {
            case "least":
                return new Aggregate(members, Aggregate.Least, value.Dimension);
            case "greatest":
                return new Aggregate(members, Aggregate.Greatest, value.Dimension);
            case "where_least":
                return new ExtremePart(members, isLeast: true);
            case "where_greatest":
                return new ExtremePart(members, isLeast: false);
        }

        if (DimensionRules.Add(value.Dimension, value.Dimension) == value.Dimension) return new Aggregate(members, Aggregate.Sum, value.Dimension);
        names.Report(Messages.NoSum(names.Span(call.Arguments[1]), Dimensions.Phrase(value.Dimension)));
        return null;
    }
}
