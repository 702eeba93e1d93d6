using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Checks the texts that definitions carry (instructions, questions, causes) and makes templates of them.</summary>
internal sealed class TextCompiler(CompilerContext context)
{
    private Vocabulary Vocabulary => context.Vocabulary;

    /// <summary>The scope of texts and states about a relation: its two parts are <c>a</c> and <c>b</c>.</summary>
    public static RuleScope OfRelation(Relation relation)
    {
        var scope = new RuleScope(relation.Pack) { TakesKinds = false };
        scope.Add("a", Sort.Part, relation.First);
        scope.Add("b", Sort.Part, relation.Second);
        return scope;
    }

    public void CompileInstructions()
    {
        foreach (var operation in Vocabulary.Operations.Values)
            if (OfIt(operation.Text, operation.Pack, operation.On) is { } template) context.Instructions[operation] = template;
    }

    public Dictionary<FactDefinition, Template> Questions() =>
        Collect(Vocabulary.Facts.Where(fact => !fact.IsDerived && !fact.IsDemand), fact => OfIt(fact.Ask, fact.Pack, fact.Kind));

    public Dictionary<FactDefinition, Template> WaysToFind() =>
        Collect(Vocabulary.Facts.Where(fact => fact.How is not null), fact => OfIt(fact.How!, fact.Pack, fact.Kind));

    public Dictionary<Cause, Template> Causes() => Collect(Vocabulary.Causes.Values, cause => OfIt(cause.Text, cause.Pack, cause.On));

    public Dictionary<JobDefinition, Template> Jobs() =>
        Collect(Vocabulary.Jobs.Values, job => JobCompiler.KindOf(job, Vocabulary) is { } kind ? OfIt(job.Text, job.Pack, kind) : null);

    public Dictionary<Relation, Template> Relations()
    {
        foreach (var relation in Vocabulary.Relations.Values)
        {
            foreach (var snippet in relation.HoldsWhile)
                if (Parser.Expression(snippet, context.Bag) is { } expression) new Resolver(context, OfRelation(relation), snippet).State(expression);
        }

        return Collect(Vocabulary.Relations.Values, Sentence);
    }

    // The text of a relation has lost its place in the file; what is wrong with it is told at the relation.
    private Template? Sentence(Relation relation)
    {
        var found = new DiagnosticBag();
        var template = new TemplateCompiler(new(context.Packs, context.Functions, found), OfRelation(relation)).Compile(new Snippet(relation.Text));
        context.Bag.AddRange(found.Ordered().Select(diagnostic => diagnostic with { Span = relation.Span }));
        return template;
    }

    private Template? OfIt(Snippet text, string pack, Kind kind) => new TemplateCompiler(context, RuleScope.OfIt(pack, kind)).Compile(text);

    private static Dictionary<T, Template> Collect<T>(IEnumerable<T> items, Func<T, Template?> compile)
        where T : class
    {
        var all = new Dictionary<T, Template>();
        foreach (var item in items)
            if (compile(item) is { } template) all[item] = template;
        return all;
    }
}
