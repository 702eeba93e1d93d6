using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles the conclusions of a rule, each by its keyword.</summary>
internal sealed class ConclusionCompiler(CompilerContext context, RuleParts rule, IfUnknown ofRule)
{
    private readonly RuleScope _scope = rule.Scope;

    public Conclusion? Compile(ConclusionDeclaration declared, bool isWithinOption = false)
    {
        var ifUnknown = declared.IfUnknown != IfUnknown.Default ? declared.IfUnknown
            : ofRule != IfUnknown.Default ? ofRule
            : ConclusionForms.Default(declared.Keyword);
        var conclusion = declared.Keyword switch
        {
            "one_of" when isWithinOption => Refuse(Messages.OneOfInOption(declared.Span)),
            "one_of" => OneOf(declared),
            "wait" => new WaitCompiler(context, rule, this).Compile(declared),
            "set" => Target(declared, (slot, fact, value) => new Conclusion.Set(slot, fact, value) { IfUnknown = ifUnknown }),
            "at_least" or "at_most" => Target(declared, (slot, fact, value) =>
                new Conclusion.Demand(slot, fact, value, declared.Keyword == "at_most") { IfUnknown = ifUnknown }),
            _ when declared.Text is { } text => OfText(declared, text),
            _ => null,
        };
        return conclusion is null ? null : conclusion with { IfUnknown = ifUnknown };
    }

    private Conclusion? OfText(ConclusionDeclaration declared, Snippet text) => declared.Keyword switch
    {
        "need" => StateOf(text) is { } state && Step(declared, isDue: true) is { } step ? new Conclusion.Need(step, state) { IfUnknown = default } : null,
        "end" => StateOf(text) is { } state ? new Conclusion.Need(-1, state) { IfUnknown = default } : null,
        "order" => Order(text),
        "forbid" => Forbid(text),
        "do" => Do(declared, text),
        "offer" => Offer(declared, text),
        "relate" => Relate(text),
        "check" => Check(declared, text),
        "for" => Finding(declared, text, Speaks.For),
        "against" => Finding(declared, text, Speaks.Against),
        "exclude" => Finding(declared, text, Speaks.Excludes),
        "stop" => Text(text) is { } words ? new Conclusion.Stop(words) { IfUnknown = default } : null,
        "danger" => Caution(declared, text, Signal.Danger),
        "warning" => Caution(declared, text, Signal.Warning),
        "caution" => Caution(declared, text, Signal.Caution),
        "notice" => Caution(declared, text, Signal.Notice),
        "tool" => AtStep(declared, text, (step, words) => new Conclusion.Tool(step, words) { IfUnknown = default }),
        "supply" => AtStep(declared, text, (step, words) => new Conclusion.Supply(step, words) { IfUnknown = default }),
        "detail" => AtStep(declared, text, (step, words) => new Conclusion.Detail(step, words) { IfUnknown = default }, isDue: true),
        _ => null,
    };

    /// <summary>The slot of the step that a conclusion is about: <c>at</c>, else the only step of the rule; -1 where there is none.</summary>
    public int? Step(ConclusionDeclaration declared, bool isDue)
    {
        if (declared.Beside.TryGetValue("at", out var at)) return StepNamed(at);
        Variable[] steps = [.. _scope.Steps];
        if (steps.Length == 1) return steps[0].Slot;
        if (steps.Length == 0 && !isDue) return -1;
        context.Bag.Add(steps.Length == 0
            ? Messages.NoStep(declared.Span, declared.Keyword)
            : Messages.WhichStep(declared.Span, declared.Keyword, steps.Select(step => step.Name)));
        return null;
    }

    public int? StepNamed(Snippet snippet) =>
        Parser.Name(snippet, "the name of a step", context.Bag) is { } name ? Names(snippet).Step(name)?.Slot : null;

    /// <summary>A text; it names only what the conditions name, so that it never adds a condition.</summary>
    public Template? Text(Snippet snippet)
    {
        var takesKinds = _scope.TakesKinds;
        _scope.TakesKinds = false;
        var template = new TemplateCompiler(context, _scope).Compile(snippet);
        _scope.TakesKinds = takesKinds;
        return template;
    }

    /// <summary>A value that a fact can have.</summary>
    public ValueExpression? Value(Snippet snippet, FactType type, string what, SourceSpan declared)
    {
        if (Parser.Expression(snippet, context.Bag) is not { } expression) return null;
        var names = Names(snippet);
        if (new ExpressionChecker(names).Check(expression, type) is not { } node) return null;
        var fits = node switch
        {
            QuantityNode quantity => type.Dimension is { } due && DimensionRules.Accepts(due, quantity.Dimension),
            WordsNode words => ExpressionChecker.AreSameWords(type, words.Type),
            TruthNode => type.IsYesNo,
            _ => type.IsText,
        };
        if (fits)
        {
            rule.Reads.Judge(node);
            return Compiled.Value(snippet.Text, names.Span(expression), type, node);
        }

        var due2 = type.Dimension is { } dimension ? Dimensions.Phrase(dimension)
            : type.IsYesNo ? "a yes or no" : type.IsText ? "a free text" : $"one of the words {Messages.Either(type.Words)}";
        context.Bag.Add(Messages.WrongValue(names.Span(expression), what, due2, ExpressionChecker.Phrase(node), declared));
        return null;
    }

    /// <summary>The operation and the part of <c>operation(part)</c>.</summary>
    public (Operation Operation, int Slot)? Work(Snippet snippet) =>
        Parser.Expression(snippet, context.Bag) is { } expression ? Work(expression, Names(snippet)) : null;

    /// <summary>A state condition.</summary>
    public StateCondition? StateOf(Snippet snippet) =>
        Parser.Expression(snippet, context.Bag) is { } expression ? Names(snippet).State(expression) : null;

    private Resolver Names(Snippet snippet) => new(context, _scope, snippet);

    private Conclusion? Refuse(Diagnostic diagnostic)
    {
        context.Bag.Add(diagnostic);
        return null;
    }

    private static (Operation Operation, int Slot)? Work(Expression expression, Resolver names)
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

    private Conclusion.Order? Order(Snippet text)
    {
        if (Parser.Order(text, context.Bag) is not { } order) return null;
        var names = Names(text);
        var (first, second) = (names.Step(order.First), names.Step(order.Second));
        if (first is null || second is null) return null;
        if (first != second) return new(first.Slot, second.Slot) { IfUnknown = default };
        context.Bag.Add(Messages.OrderOfOne(names.Span(order), first.Name));
        return null;
    }

    private Conclusion? Forbid(Snippet text)
    {
        if (Parser.Expression(text, context.Bag) is not { } expression) return null;
        var names = Names(text);
        switch (expression)
        {
            case Expression.Name name:
                return names.Step(name) is { } step ? new Conclusion.ForbidStep(step.Slot) { IfUnknown = default } : null;
            case Expression.Call:
                return Work(expression, names) is { } work ? new Conclusion.ForbidWork(work.Operation, work.Slot) { IfUnknown = default } : null;
            default:
                return names.State(expression) is { } state ? new Conclusion.ForbidState(state) { IfUnknown = default } : null;
        }
    }

    private Conclusion.Do? Do(ConclusionDeclaration declared, Snippet text)
    {
        var (before, after) = (Neighbour("before"), Neighbour("after"));
        return Work(text) is { } work && before is { } b && after is { } a ? new(work.Operation, work.Slot, b, a) { IfUnknown = default } : null;

        int? Neighbour(string key) => declared.Beside.TryGetValue(key, out var step) ? StepNamed(step) : -1;
    }

    private Conclusion.Offer? Offer(ConclusionDeclaration declared, Snippet text)
    {
        var words = declared.Beside.TryGetValue("text", out var written) ? Text(written) : null;
        return Work(text) is { } work && (written is null || words is not null) ? new(work.Operation, work.Slot, words) { IfUnknown = default } : null;
    }

    private Conclusion.Relate? Relate(Snippet text)
    {
        if (Parser.Expression(text, context.Bag) is not { } expression) return null;
        var names = Names(text);
        if (expression is not Expression.Call call)
        {
            names.Report(Messages.RelationDue(names.Span(expression)));
            return null;
        }

        if (new CallChecker(names, new(names)).Relation(call, narrows: false) is not { } found) return null;
        rule.Reads.Concluded.Add(new(found.Relation));
        return new(found.Relation, found.First.Slot, found.Second.Slot) { IfUnknown = default };
    }

    private Conclusion.Check? Check(ConclusionDeclaration declared, Snippet text)
    {
        if (Parser.Expression(text, context.Bag) is not { } expression || Step(declared, isDue: true) is not { } step) return null;
        var names = Names(text);
        if (new ExpressionChecker(names).Truth(expression) is not { } node) return null;
        var test = Compiled.Test(text.Text, names.Span(expression), node);
        if (!new Outcomes(context, _scope).CanHold(test, node, names, Messages.CheckNeverPasses)) return null;
        var words = declared.Beside.TryGetValue("text", out var written)
            ? Text(written)
            : new TemplateCompiler(context, _scope).Compile(Describer.Describe(expression), text, text.Text);
        var during = declared.Beside.TryGetValue("during", out var flag) && flag.Text is "yes" or "true";
        return words is null ? null : new(step, test, words, during) { IfUnknown = default };
    }

    private Conclusion.Finding? Finding(ConclusionDeclaration declared, Snippet text, Speaks speaks)
    {
        if (Parser.Expression(text, context.Bag) is not { } expression) return null;
        var names = Names(text);
        if (expression is not Expression.Call { Arguments.Count: 1 } call)
        {
            names.Report(Messages.CauseDue(names.Span(expression)));
            return null;
        }

        if (names.Cause(call.Function) is not { } cause || names.PartArgument(call.Arguments[0], cause.Name) is not { } part) return null;
        if (!names.Fits(part, cause.On, call.Arguments[0], $"the cause {Messages.Quote(cause.Name)}", cause.Span, narrows: false)) return null;
        var isStrong = speaks == Speaks.Excludes || (declared.Beside.TryGetValue("strength", out var strength) && strength.Text == "strong");
        return new(cause, part.Slot, speaks, isStrong) { IfUnknown = default };
    }

    private Conclusion? Caution(ConclusionDeclaration declared, Snippet text, Signal signal) =>
        AtStep(declared, text, (step, words) => new Conclusion.Caution(step, signal, words) { IfUnknown = default });

    private Conclusion? AtStep(ConclusionDeclaration declared, Snippet text, Func<int, Template, Conclusion> make, bool isDue = false)
    {
        var (step, words) = (Step(declared, isDue), Text(text));
        return step is { } slot && words is not null ? make(slot, words) : null;
    }

    private Conclusion? Target(ConclusionDeclaration declared, Func<int, FactDefinition, ValueExpression, Conclusion> make)
    {
        if (declared.Target is not { } target || declared.Text is not { } text || Parser.Path(target, context.Bag) is not { } path) return null;
        var names = Names(target);
        if (names.Fact(path) is not { } found) return null;
        var (isDemand, fact) = (declared.Keyword != "set", found.Fact);
        if (isDemand && !fact.Type.IsQuantity) return Refuse(Messages.NoDemands(names.Span(path), fact.ToString(), fact.Span));
        if (!isDemand && fact.IsDemand) return Refuse(Messages.OnlyDemands(names.Span(path), fact.ToString(), fact.Span));
        rule.Reads.Concluded.Add(new(fact, found.Part.Slot, isDemand || fact.IsDemand));
        return Value(text, fact.Type, Messages.Quote(fact.ToString()), fact.Span) is { } value ? make(found.Part.Slot, fact, value) : null;
    }

    private Conclusion.OneOf? OneOf(ConclusionDeclaration declared)
    {
        var options = new List<Option>();
        foreach (var option in declared.Options)
        {
            var (text, open) = (Text(option.Text), option.If is null ? null : OpenIf(option.If));
            var then = option.Then.Select(conclusion => Compile(conclusion, isWithinOption: true)).ToList();
            if (text is not null && (option.If is null || open is not null) && !then.Contains(null))
                options.Add(new(text, option.Rank, open, then!, option.Span));
        }

        return options.Count == declared.Options.Count ? new(options) { IfUnknown = default } : null;
    }

    private Test? OpenIf(Snippet snippet)
    {
        if (Parser.Expression(snippet, context.Bag) is not { } expression) return null;
        var names = Names(snippet);
        if (new ExpressionChecker(names).Truth(expression) is not { } node) return null;
        rule.Reads.Judge(node);
        var test = Compiled.Test(snippet.Text, names.Span(expression), node);
        return new Outcomes(context, _scope).CanHold(test, node, names, Messages.OptionNeverOpen) ? test : null;
    }
}
