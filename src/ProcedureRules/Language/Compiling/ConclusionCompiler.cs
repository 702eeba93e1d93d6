using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles the conclusions of a rule, each by its keyword.</summary>
internal sealed class ConclusionCompiler(CompilerContext context, RuleParts rule, IfUnknown ofRule)
{
    private static readonly FactType Factor = FactType.Of(Dimension.Number);

    public Terms Terms { get; } = new(context, rule);

    public Conclusion? Compile(ConclusionDeclaration declared) => Compile(declared, isWithinOption: false);

    private Conclusion? Compile(ConclusionDeclaration declared, bool isWithinOption)
    {
        var conclusion = declared.Keyword switch
        {
            "one_of" when isWithinOption => Refuse(Messages.OneOfInOption(declared.Span)),
            "one_of" => OneOf(declared),
            "wait" => new WaitCompiler(context, Terms).Compile(declared),
            "set" or "at_least" or "at_most" => Value(declared),
            _ when declared.Text is { } text => OfText(declared, text),
            _ => null,
        };
        return conclusion is null ? null : conclusion with
        {
            Span = (declared.Target ?? declared.Text)?.Span ?? declared.Span,
            IfUnknown = declared.IfUnknown != IfUnknown.Default ? declared.IfUnknown
                : ofRule != IfUnknown.Default ? ofRule
                : ConclusionForms.Default(declared.Keyword),
        };
    }

    private Conclusion? OfText(ConclusionDeclaration declared, Snippet text) => declared.Keyword switch
    {
        "need" => Terms.State(text) is { } state && Step(declared, isDue: true) is { } step ? new Conclusion.Need(step, state) { IfUnknown = default } : null,
        "end" => Terms.State(text) is { } state ? new Conclusion.Need(-1, state) { IfUnknown = default } : null,
        "order" => Order(text),
        "forbid" => Forbid(text),
        "do" => Do(declared, text),
        "offer" => Offer(declared, text),
        "relate" => Relate(text),
        "check" => Check(declared, text),
        "slower" => Slower(declared, text),
        "for" => Finding(declared, text, Speaks.For),
        "against" => Finding(declared, text, Speaks.Against),
        "exclude" => Finding(declared, text, Speaks.Excludes),
        "stop" => Terms.Text(text) is { } words ? new Conclusion.Stop(words) { IfUnknown = default } : null,
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
    private int? Step(ConclusionDeclaration declared, bool isDue)
    {
        if (declared.Beside.TryGetValue("at", out var at)) return Terms.Step(at);
        Variable[] steps = [.. rule.Scope.Steps];
        if (steps.Length == 1) return steps[0].Slot;
        if (steps.Length == 0 && !isDue) return -1;
        context.Bag.Add(steps.Length == 0
            ? Messages.NoStep(declared.Span, declared.Keyword)
            : Messages.WhichStep(declared.Span, declared.Keyword, steps.Select(step => step.Name)));
        return null;
    }

    private Conclusion? Refuse(Diagnostic diagnostic)
    {
        context.Bag.Add(diagnostic);
        return null;
    }

    private Conclusion.Order? Order(Snippet text)
    {
        if (Parser.Order(text, context.Bag) is not { } order) return null;
        var names = Terms.Names(text);
        var (first, second) = (names.Step(order.First), names.Step(order.Second));
        if (first is null || second is null) return null;
        if (first != second) return new(first.Slot, second.Slot) { IfUnknown = default };
        context.Bag.Add(Messages.OrderOfOne(names.Span(order), first.Name));
        return null;
    }

    private Conclusion? Forbid(Snippet text)
    {
        if (Parser.Expression(text, context.Bag) is not { } expression) return null;
        var names = Terms.Names(text);
        return expression switch
        {
            Expression.Name name => names.Step(name) is { } step ? new Conclusion.ForbidStep(step.Slot) { IfUnknown = default } : null,
            Expression.Call => Terms.Work(expression, names) is { } work ? new Conclusion.ForbidWork(work.Operation, work.Slot) { IfUnknown = default } : null,
            _ => names.State(expression) is { } state ? new Conclusion.ForbidState(state) { IfUnknown = default } : null,
        };
    }

    private Conclusion.Do? Do(ConclusionDeclaration declared, Snippet text)
    {
        var (before, after) = (Neighbour("before"), Neighbour("after"));
        return Terms.Work(text) is { } work && before is { } b && after is { } a ? new(work.Operation, work.Slot, b, a) { IfUnknown = default } : null;

        int? Neighbour(string key) => declared.Beside.TryGetValue(key, out var step) ? Terms.Step(step) : -1;
    }

    private Conclusion.Offer? Offer(ConclusionDeclaration declared, Snippet text)
    {
        var words = declared.Beside.TryGetValue("text", out var written) ? Terms.Text(written) : null;
        return Terms.Work(text) is { } work && (written is null || words is not null) ? new(work.Operation, work.Slot, words) { IfUnknown = default } : null;
    }

    private Conclusion.Relate? Relate(Snippet text)
    {
        if (Parser.Expression(text, context.Bag) is not { } expression) return null;
        var names = Terms.Names(text);
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
        var (step, limits) = (Step(declared, isDue: true), Terms.Test(text, Messages.CheckNeverPasses));
        if (step is not { } slot || limits is null) return null;
        var words = declared.Beside.TryGetValue("text", out var written)
            ? Terms.Text(written)
            : new TemplateCompiler(context, rule.Scope).Compile(Describer.Describe(Parser.Expression(text, context.Bag)!), text, text.Text);
        var during = declared.Beside.TryGetValue("during", out var flag) && flag.Text is "yes" or "true";
        return words is null ? null : new(slot, limits, words, during) { IfUnknown = default };
    }

    private Conclusion.Slower? Slower(ConclusionDeclaration declared, Snippet text)
    {
        var (step, factor) = (Step(declared, isDue: true), Terms.Value(text, Factor, "'slower'", SourceSpan.None));
        return step is { } slot && factor is not null ? new(slot, factor) { IfUnknown = default } : null;
    }

    private Conclusion.Finding? Finding(ConclusionDeclaration declared, Snippet text, Speaks speaks)
    {
        if (Parser.Expression(text, context.Bag) is not { } expression) return null;
        var names = Terms.Names(text);
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
        var (step, words) = (Step(declared, isDue), Terms.Text(text));
        return step is { } slot && words is not null ? make(slot, words) : null;
    }

    private Conclusion? Value(ConclusionDeclaration declared)
    {
        if (declared.Target is not { } target || declared.Text is not { } text || Terms.Fact(target) is not var (slot, fact)) return null;
        var isDemand = declared.Keyword != "set";
        if (isDemand && !fact.Type.IsQuantity) return Refuse(Messages.NoDemands(target.Span, fact.ToString(), fact.Span));
        if (!isDemand && fact.IsDemand) return Refuse(Messages.OnlyDemands(target.Span, fact.ToString(), fact.Span));
        rule.Reads.Concluded.Add(new(fact, slot, isDemand));
        if (Terms.Value(text, fact.Type, Messages.Quote(fact.ToString()), fact.Span) is not { } value) return null;
        return isDemand
            ? new Conclusion.Demand(slot, fact, value, declared.Keyword == "at_most") { IfUnknown = default }
            : new Conclusion.Set(slot, fact, value) { IfUnknown = default };
    }

    private Conclusion.OneOf? OneOf(ConclusionDeclaration declared)
    {
        var options = new List<Option>();
        foreach (var option in declared.Options)
        {
            var open = option.If is null ? null : Terms.Test(option.If, Messages.OptionNeverOpen);
            var then = option.Then.Select(conclusion => Compile(conclusion, isWithinOption: true)).ToList();
            if (Terms.Text(option.Text) is { } text && (option.If is null || open is not null) && !then.Contains(null))
                options.Add(new(text, option.Rank, open, then!, option.Span));
        }

        return options.Count == declared.Options.Count ? new(options) { IfUnknown = default } : null;
    }
}
