using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Checks the calls of functions and the relations that stand inside expressions.</summary>
internal sealed class CallChecker(Resolver names, ExpressionChecker expressions)
{
    public Node? Check(Expression.Call call, FactType? due)
    {
        switch (call.Function.Text)
        {
            case "min":
                return Fold(call, Quantity.Min);
            case "max":
                return Fold(call, Quantity.Max);
            case "abs":
                return Abs(call);
            case "if":
                return If(call, due);
            case "demanded" or "allowed":
                return Demanded(call);
            case "count" or "sum" or "least" or "greatest" or "where_least" or "where_greatest":
                return new AggregateChecker(names, expressions).Check(call);
            case "any":
                return Any(call);
            case "at_start":
                names.Report(Messages.AtStartInside(names.Span(call)));
                return null;
        }

        if (names.Context.Functions.Find(call.Function.Text) is { } function) return Host(call, function);
        if (names.Context.Vocabulary.Relations.ContainsKey(call.Function.Text)) return Related(call);
        names.Unknown(call.Function, "function or relation", names.Context.Functions.Names.Concat(names.Context.Vocabulary.Relations.Keys));
        return null;
    }

    /// <summary>The relation and the two variables of a call.</summary>
    public (Relation Relation, Variable First, Variable Second)? Relation(Expression.Call call, bool narrows)
    {
        if (names.Relation(call.Function) is not { } relation || !HasArguments(call, 2)) return null;
        var (a, b) = (names.PartArgument(call.Arguments[0], relation.Name), names.PartArgument(call.Arguments[1], relation.Name));
        if (a is null || b is null) return null;
        var of = $"the relation {Messages.Quote(relation.Name)}";
        var fits = names.Fits(a, relation.First, call.Arguments[0], of, relation.Span, narrows)
            & names.Fits(b, relation.Second, call.Arguments[1], of, relation.Span, narrows);
        return fits ? (relation, a, b) : null;
    }

    private RelationHolds? Related(Expression.Call call) =>
        Relation(call, narrows: true) is { } found ? new RelationHolds(found.Relation, found.First.Slot, found.Second.Slot) : null;

    private Folded? Fold(Expression.Call call, Func<Quantity, Quantity, Quantity> operation)
    {
        if (call.Arguments.Count < 2)
        {
            names.Report(Messages.ArgumentCount(names.Span(call), call.Function.Text, "two or more arguments", call.Arguments.Count));
            return null;
        }

        var items = call.Arguments.Select(expressions.Quantity).ToArray();
        if (Array.Exists(items, item => item is null)) return null;
        var common = items[0]!.Dimension;
        for (var i = 1; i < items.Length; i++)
        {
            if (DimensionRules.Common(common, items[i]!.Dimension) is not { } next)
            {
                names.Report(Messages.MixedArguments(
                    names.Span(call.Arguments[i]), call.Function.Text, Dimensions.Phrase(common), Dimensions.Phrase(items[i]!.Dimension)));
                return null;
            }

            common = next;
        }

        return new(operation, items!, common);
    }

    private Converted? Abs(Expression.Call call)
    {
        if (!HasArguments(call, 1) || expressions.Quantity(call.Arguments[0]) is not { } operand) return null;
        if (DimensionRules.Negate(operand.Dimension) is not null) return new(Quantity.Abs, operand);
        names.Report(Messages.NoSign(names.Span(call), Phrases.Of(operand)));
        return null;
    }

    private Node? If(Expression.Call call, FactType? due)
    {
        if (!HasArguments(call, 3)) return null;
        var condition = expressions.Truth(call.Arguments[0]);
        var (yes, no) = (expressions.Check(call.Arguments[1], due), expressions.Check(call.Arguments[2], due));
        if (condition is null || yes is null || no is null) return null;
        switch (yes, no)
        {
            case (QuantityNode a, QuantityNode b) when DimensionRules.Common(a.Dimension, b.Dimension) is { } common:
                return new ChosenQuantity(condition, a, b, common);
            case (WordsNode a, WordsNode b) when ExpressionChecker.AreSameWords(a.Type, b.Type):
                return new ChosenWords(condition, a, b);
            case (TruthNode a, TruthNode b):
                return new ChosenTruth(condition, a, b);
            case (TruthNode a, WordsNode { Type.IsYesNo: true } b):
                return new ChosenTruth(condition, a, new YesNoTruth(b));
            case (WordsNode { Type.IsYesNo: true } a, TruthNode b):
                return new ChosenTruth(condition, new YesNoTruth(a), b);
            default:
                names.Report(Messages.MixedArguments(
                    names.Span(call.Arguments[2]), "if", Phrases.Of(yes), Phrases.Of(no)));
                return null;
        }
    }

    private DemandedQuantity? Demanded(Expression.Call call)
    {
        if (!HasArguments(call, 1)) return null;
        if (call.Arguments[0] is not Expression.Path path)
        {
            names.Report(Messages.FactDue(names.Span(call.Arguments[0]), call.Function.Text));
            return null;
        }

        if (names.Fact(path) is not { } found) return null;
        if (found.Fact.Type.IsQuantity) return new(found.Part.Slot, found.Fact, isMost: call.Function.Text == "allowed");
        names.Report(Messages.NoDemands(names.Span(path), found.Fact.ToString(), found.Fact.Span));
        return null;
    }

    private AnyPart? Any(Expression.Call call)
    {
        if (!HasArguments(call, 1)) return null;
        if (call.Arguments[0] is Expression.Name name)
        {
            return names.Kind(name) is { } kind ? new(kind) : null;
        }

        names.Report(Messages.KindDue(names.Span(call.Arguments[0]), "any", "any(oil_cooler)"));
        return null;
    }

    private HostCall? Host(Expression.Call call, FunctionDefinition function)
    {
        if (!HasArguments(call, function.Parameters.Count)) return null;
        var arguments = call.Arguments.Select((argument, i) => Argument(argument, function, function.Parameters[i])).ToArray();
        if (Array.Exists(arguments, argument => argument is null)) return null;
        var (span, failed) = (names.Span(call), names.Context.Functions.Failed);
        return new(function, arguments!, why => failed?.Invoke(Messages.HostFunctionFailed(span, function.Name, why)));
    }

    private Node? Argument(Expression given, FunctionDefinition function, FunctionParameter due)
    {
        var node = due.Dimension is null ? expressions.Check(given, FactType.OneOf(due.Words)) : expressions.Quantity(given);
        switch (node)
        {
            case null:
            case QuantityNode quantity when due.Dimension is { } dimension && DimensionRules.Accepts(dimension, quantity.Dimension):
            case WordsNode words when due.Words.Intersect(words.Type.Words).Any():
                return node;
            default:
                var phrase = due.Dimension is { } missed ? Dimensions.Phrase(missed) : Phrases.Of(FactType.OneOf(due.Words));
                names.Report(Messages.WrongArgument(names.Span(given), function.Name, due.Name, phrase, Phrases.Of(node)));
                return null;
        }
    }

    private bool HasArguments(Expression.Call call, int due)
    {
        if (call.Arguments.Count == due) return true;
        names.Report(Messages.ArgumentCount(names.Span(call), call.Function.Text, Messages.Count(due, "argument"), call.Arguments.Count));
        return false;
    }
}
