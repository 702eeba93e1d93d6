using ProcedureRules.Language;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>The packs under the lint, with what several checks ask of them.</summary>
internal sealed class LintSubject
{
    private readonly HashSet<object> _read = [];

    public LintSubject(ProcedureEngine engine)
    {
        Rules = engine.Rules;
        Written = engine.Written;
        foreach (var node in Rules.Rules.SelectMany(RuleNodes.Of).Concat(TextNodes())) Read(node);
        foreach (var pattern in Rules.Rules.SelectMany(rule => rule.Patterns))
            if (pattern.Predicate.Sort == PredicateSort.Related) _read.Add(Vocabulary.Relations[pattern.Predicate.Name]);
        foreach (var conclusion in Conclusions.Select(entry => entry.Conclusion))
        {
            if (conclusion is Conclusion.Figure figure) _read.Add(figure.Fact);
            else if (conclusion is Conclusion.Know know) _read.Add(know.Fact);
            else if (conclusion is Conclusion.Wait { Since: { } since }) _read.Add(since.Fact);
        }

        Occurring = OccurringOperations.Of(Vocabulary, [.. Conclusions.Select(entry => entry.Conclusion)]);
    }

    public RuleBase Rules { get; }

    public PackSet Written { get; }

    public Vocabulary Vocabulary => Rules.Vocabulary;

    /// <summary>The rules that packs write: those that stand under <c>rules</c> and the rows of tables.</summary>
    public IEnumerable<CompiledRule> Authored => Rules.Rules.Take(Rules.AuthoredCount);

    /// <summary>Every conclusion of every rule, those of options too.</summary>
    public IEnumerable<(CompiledRule Rule, Conclusion Conclusion)> Conclusions =>
        Rules.Rules.SelectMany(rule => RuleNodes.ConclusionsOf(rule).Select(conclusion => (rule, conclusion)));

    /// <summary>The operations that a plan may hold.</summary>
    public IReadOnlySet<Operation> Occurring { get; }

    /// <summary>Whether anything reads a fact or a relation.</summary>
    public bool IsRead(object definition) => _read.Contains(definition);

    private IEnumerable<Node> TextNodes() => Rules.Instructions.Values
        .Concat(Rules.Questions.Values).Concat(Rules.WaysToFind.Values).Concat(Rules.Causes.Values).Concat(Rules.Jobs.Values).Concat(Rules.Relations.Values)
        .SelectMany(text => text.Nodes);

    private void Read(Node node)
    {
        foreach (var one in node.All())
        {
            if (one is FactQuantity quantity) _read.Add(quantity.Fact);
            else if (one is FactWords words) _read.Add(words.Fact);
            else if (one is FactText text) _read.Add(text.Fact);
            else if (one is DemandedQuantity demanded) _read.Add(demanded.Fact);
            else if (one is RelationHolds relation) _read.Add(relation.Relation);
            else if (one is IGathers gathers) foreach (var gathered in gathers.Gathered) Read(gathered);
        }
    }
}
