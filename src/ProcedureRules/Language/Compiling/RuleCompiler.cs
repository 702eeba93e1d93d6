using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Checks all that packs say and compiles it to what an engine runs on.</summary>
internal static class RuleCompiler
{
    /// <summary>
    /// Compiles packs. Total: what is wrong is left out and told in the bag, all of it at once; whoever uses the result looks at the bag first.
    /// </summary>
    public static RuleBase Compile(PackSet packs, FunctionRegistry? functions, DiagnosticBag bag)
    {
        var context = new CompilerContext(packs, functions ?? FunctionRegistry.Standard, bag);
        var texts = new TextCompiler(context);
        texts.CompileInstructions();
        var authored = new AuthoredRules(context);
        var tables = new TableCompiler(context, authored);
        List<CompiledRule> rules =
        [
            .. packs.Rules.SelectMany(authored.Compile),
            .. packs.Tables.SelectMany(tables.Compile),
        ];
        var authoredCount = rules.Count;
        rules.AddRange(packs.Vocabulary.Operations.Values.SelectMany(new OperationCompiler(context).Compile));
        rules.AddRange(packs.Vocabulary.Jobs.Values.SelectMany(new JobCompiler(context).Compile));
        var laws = packs.Laws.SelectMany(new LawCompiler(context, authored).Compile).ToList();
        new Rings(context.Reads).Report(bag);
        return new()
        {
            Packs = packs.Headers,
            Vocabulary = packs.Vocabulary,
            Rules = rules,
            AuthoredCount = authoredCount,
            Laws = laws,
            Instructions = context.Instructions,
            Whiles = new WhileCompiler(context).Compile(),
            Questions = texts.Questions(),
            WaysToFind = texts.WaysToFind(),
            Causes = texts.Causes(),
            Jobs = texts.Jobs(),
            Relations = texts.Relations(),
        };
    }
}
