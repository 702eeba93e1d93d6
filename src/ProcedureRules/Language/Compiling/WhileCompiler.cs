using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles what must hold while a state lasts.</summary>
internal sealed class WhileCompiler(CompilerContext context)
{
    public IReadOnlyList<WhileCondition> Compile() =>
        [.. context.Vocabulary.Aspects.SelectMany(aspect => aspect.While.SelectMany(entry => Compile(aspect, entry.Key, entry.Value)))];

    private IEnumerable<WhileCondition> Compile(Aspect aspect, int state, IReadOnlyList<Snippet> conditions)
    {
        foreach (var snippet in conditions)
        {
            var scope = new RuleScope(aspect.Pack);
            scope.Add("it", Sort.Part, aspect.Kind);
            if (Parser.Expression(snippet, context.Bag) is not { } expression) continue;
            if (new Resolver(context, scope, snippet).State(expression) is not { } found) continue;
            var other = found.Slot == 0 ? null : scope.Variables[found.Slot].Kind;
            yield return new(aspect, state, other, found.Aspect, found.States, snippet.Text);
        }
    }
}
