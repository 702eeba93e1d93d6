using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles what an operation needs and carries to rules about every step that does it.</summary>
internal sealed class OperationCompiler(CompilerContext context)
{
    private const int It = 0;
    private const int Step = 1;

    public IEnumerable<CompiledRule> Compile(Operation operation)
    {
        var scope = new RuleScope(operation.Pack);
        scope.Add("it", Sort.Part, operation.On);
        scope.Add("step", Sort.Step, null);
        var main = new RuleParts($"operation {operation.Name}", scope, operation.Span);
        main.Patterns.Add(new(new(PredicateSort.Does, operation.Name), Step, -1, operation.Name));
        main.Patterns.Add(new(new(PredicateSort.On), Step, It, operation.Name));
        var because = operation.Because is { } reason ? new TemplateCompiler(context, RuleScope.OfIt(operation.Pack, operation.On)).Compile(reason) : null;
        var rules = new RuleGroup(context, main);
        foreach (var need in Needs(operation))
            rules.Add(terms => terms.State(need.Condition) is { } state ? new Conclusion.Need(Step, state) { IfUnknown = IfUnknown.BehindCheck, Span = need.Condition.Span } : null);
        AddTexts(rules, operation.Tools, (words, span) => new Conclusion.Tool(Step, words) { IfUnknown = IfUnknown.Do, Span = span });
        AddTexts(rules, operation.Supplies, (words, span) => new Conclusion.Supply(Step, words) { IfUnknown = IfUnknown.Do, Span = span });
        AddTexts(rules, operation.Detail, (words, span) => new Conclusion.Detail(Step, words) { IfUnknown = IfUnknown.Do, Span = span });
        foreach (var figure in operation.Figures)
            rules.Add(terms => terms.Fact(figure) is { } found ? new Conclusion.Figure(Step, found.Slot, found.Fact) { IfUnknown = IfUnknown.Do, Span = figure.Span } : null);
        return rules.Build(operation.Pack, because, operation.Basis);
    }

    /// <summary>Its own needs that hold on its way, and those of the step it undoes that hold on the way back.</summary>
    private static IEnumerable<OperationNeed> Needs(Operation operation)
    {
        var own = operation.Needs.Where(need => need.Way != Way.On || operation.Undoes is not null);
        return operation.Undoes is { } undone ? own.Concat(undone.Needs.Where(need => need.Way != Way.Off)).DistinctBy(need => need.Condition.Text) : own;
    }

    private static void AddTexts(RuleGroup rules, IReadOnlyList<Snippet> texts, Func<Template, SourceSpan, Conclusion> make)
    {
        foreach (var text in texts) rules.Add(terms => terms.TextWithKinds(text) is { } words ? make(words, text.Span) : null);
    }
}
