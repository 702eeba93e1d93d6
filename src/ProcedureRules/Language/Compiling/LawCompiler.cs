using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles laws: they are written as rules are, but a plan is held to them and not made by them.</summary>
internal sealed class LawCompiler(CompilerContext context, AuthoredRules authored)
{
    private static readonly string[] Judged = ["need", "end", "order", "forbid", "wait", "danger", "warning", "caution", "notice"];

    /// <summary>The laws that one comes to; none where something in it is wrong.</summary>
    public IReadOnlyList<CompiledRule> Compile(RuleDeclaration law)
    {
        foreach (var conclusion in law.Then.Where(conclusion => !Judged.Contains(conclusion.Keyword)))
            context.Bag.Add(Messages.NoPlanCanBeHeldTo(conclusion.Span, conclusion.Keyword, Judged));
        return authored.Compile(law);
    }
}
