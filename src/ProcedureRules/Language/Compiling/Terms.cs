using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>What conclusions are made of, each from one snippet: states, work, facts, values, tests, steps and texts.</summary>
internal sealed class Terms(CompilerContext context, RuleParts rule)
{
    private readonly RuleScope _scope = rule.Scope;

    public Resolver Names(Snippet snippet) => new(context, _scope, snippet);

    /// <summary>A state condition.</summary>
    public StateCondition? State(Snippet snippet) =>
        Parser.Expression(snippet, context.Bag) is { } expression ? Names(snippet).State(expression) : null;

    /// <summary>The slot of a step that is named.</summary>
    public int? Step(Snippet snippet) =>
        Parser.Name(snippet, "the name of a step", context.Bag) is { } name ? Names(snippet).Step(name)?.Slot : null;

    /// <summary>A fact of a part, by its path.</summary>
    public (int Slot, FactDefinition Fact)? Fact(Snippet snippet) =>
        Parser.Path(snippet, context.Bag) is { } path && Names(snippet).Fact(path) is { } found ? (found.Part.Slot, found.Fact) : null;

    /// <summary>The operation and the part of <c>operation(part)</c>.</summary>
    public (Operation Operation, int Slot)? Work(Snippet snippet) =>
        Parser.Expression(snippet, context.Bag) is { } expression ? Work(expression, Names(snippet)) : null;

    /// <inheritdoc cref="Work(Snippet)"/>
    public static (Operation Operation, int Slot)? Work(Expression expression, Resolver names)
    {
        if (expression is not Expression.Call { Arguments.Count: 1 } call)
        {
            names.Report(Messages.WorkDue(names.Span(expression)));
            return null;
        }

        if (names.Operation(call.Function) is not { } operation || names.PartArgument(call.Arguments[0], operation.Name) is not { } part) return null;
        var of = $"the operation {Messages.Quote(operation.Name)}";
        return names.Fits(part, operation.On, call.Arguments[0], of, operation.Span, narrows: false) ? (operation, part.Slot) : null;
    }

    /// <summary>A condition that can come true; <paramref name="never"/> says what it means if it cannot.</summary>
    public Test? Test(Snippet snippet, Func<SourceSpan, string, Diagnostic> never)
    {
        if (Parser.Expression(snippet, context.Bag) is not { } expression) return null;
        var names = Names(snippet);
        if (new ExpressionChecker(names).Truth(expression) is not { } node) return null;
        rule.Reads.Judge(node);
        var test = Compiled.Test(snippet.Text, names.Span(expression), node);
        return new Outcomes(context, _scope).CanHold(test, node, names, never) ? test : null;
    }

    /// <summary>A value of a type.</summary>
    public ValueExpression? Value(Snippet snippet, FactType type, string what, SourceSpan declared)
    {
        if (Parser.Expression(snippet, context.Bag) is not { } expression) return null;
        var names = Names(snippet);
        if (new ExpressionChecker(names).Check(expression, type) is not { } node) return null;
        var fits = node switch
        {
            QuantityNode quantity => type.Dimension is { } dimension && DimensionRules.Accepts(dimension, quantity.Dimension),
            WordsNode words => ExpressionChecker.AreSameWords(type, words.Type),
            TruthNode => type.IsYesNo,
            _ => type.IsText,
        };
        if (!fits)
        {
            context.Bag.Add(Messages.WrongValue(names.Span(expression), what, Phrases.Of(type), Phrases.Of(node), declared));
            return null;
        }

        rule.Reads.Judge(node);
        return Compiled.Value(snippet.Text, names.Span(expression), type, node);
    }

    /// <summary>A text; it names only what the conditions name, so that it never adds a condition.</summary>
    public Template? Text(Snippet snippet)
    {
        var takesKinds = _scope.TakesKinds;
        _scope.TakesKinds = false;
        var template = TextWithKinds(snippet);
        _scope.TakesKinds = takesKinds;
        return template;
    }

    /// <summary>A text that may show the facts of any kind; on a vehicle without such a part it is left out.</summary>
    public Template? TextWithKinds(Snippet snippet) => new TemplateCompiler(context, _scope).Compile(snippet);
}
