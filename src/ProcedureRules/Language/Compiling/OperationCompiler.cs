using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
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
        var rules = new PartRules(context, main, operation.Pack, because, operation.Basis);
        foreach (var need in Needs(operation))
            rules.Add($"need {need.Condition.Text}", (_, c) => c.StateOf(need.Condition) is { } state ? new Conclusion.Need(Step, state) { IfUnknown = IfUnknown.BehindCheck } : null, need.Condition.Span);
        Texts(rules, "tool", operation.Tools, words => new Conclusion.Tool(Step, words) { IfUnknown = IfUnknown.Do });
        Texts(rules, "supply", operation.Supplies, words => new Conclusion.Supply(Step, words) { IfUnknown = IfUnknown.Do });
        Texts(rules, "detail", operation.Detail, words => new Conclusion.Detail(Step, words) { IfUnknown = IfUnknown.Do });
        foreach (var figure in operation.Figures)
            rules.Add($"figure {figure.Text}", (parts, _) => FactAt(figure, parts) is { } found ? new Conclusion.Figure(Step, found.Part.Slot, found.Fact) { IfUnknown = IfUnknown.Do } : null, figure.Span);
        return rules.Build();
    }

    /// <summary>Its own needs that hold on its way, and those of the step it undoes that hold on the way back.</summary>
    private static IEnumerable<OperationNeed> Needs(Operation operation)
    {
        var own = operation.Needs.Where(need => need.Way != Way.On || operation.Undoes is not null);
        return operation.Undoes is { } undone ? own.Concat(undone.Needs.Where(need => need.Way != Way.Off)).DistinctBy(need => need.Condition.Text) : own;
    }

    // A text that names a kind to show one of its facts needs a part of that kind, and so a rule of its own.
    private void Texts(PartRules rules, string what, IReadOnlyList<Snippet> texts, Func<Template, Conclusion> make)
    {
        for (var i = 0; i < texts.Count; i++)
        {
            var text = texts[i];
            rules.Add($"{what} {i + 1}", (parts, _) => new TemplateCompiler(context, parts.Scope).Compile(text) is { } words ? make(words) : null, text.Span);
        }
    }

    private (Variable Part, FactDefinition Fact)? FactAt(Snippet snippet, RuleParts parts) =>
        Parser.Path(snippet, context.Bag) is { } path ? new Resolver(context, parts.Scope, snippet).Fact(path) : null;
}
