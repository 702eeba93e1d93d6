using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Language;

/// <summary>Beliefs that a test writes down; what it leaves out is unknown.</summary>
internal sealed class SupposedBeliefs : IBeliefs
{
    public Dictionary<(string Part, string Fact), Value> Values { get; } = [];

    public Dictionary<string, Quantity> Demands { get; } = [];

    public Dictionary<(string Relation, string A, string B), Truth> Relations { get; } = [];

    public Dictionary<string, Truth> Parts { get; } = [];

    public Value Fact(Part part, FactDefinition fact) =>
        Values.TryGetValue((part.Name, fact.Name), out var value) ? value : Value.Unknown(fact);

    public Quantity Demanded(Part part, FactDefinition fact) =>
        Demands.TryGetValue(fact.Name, out var band) ? band : Quantity.Anything(fact.Type.Dimension!.Value);

    public Quantity Allowed(Part part, FactDefinition fact) => Demanded(part, fact);

    public Truth Related(Relation relation, Part a, Part b) => Relations.GetValueOrDefault((relation.Name, a.Name, b.Name), Truth.Unknown);

    public Truth Exists(Part part) => Parts.GetValueOrDefault(part.Name, Truth.Unknown);

    /// <summary>The parts in <see cref="Parts"/> named like the kind, or like it and a number: <c>starter_2</c>.</summary>
    public IReadOnlyList<Part> PartsOf(Kind kind) => [.. Parts.Keys.Where(name => KindOf(name) == kind.Name).Select(name => new Part(name, kind))];

    /// <summary>Writes down a value, given as a figure or as words joined by <c>|</c>.</summary>
    public SupposedBeliefs With(Vocabulary vocabulary, string path, string value)
    {
        var (owner, name) = (path.Split('.')[0], path.Split('.')[1]);
        var fact = vocabulary.FactOf(vocabulary.Kinds[KindOf(owner)], name)!;
        Values[(owner, name)] = fact.Type.IsQuantity ? Value.Of(fact.Type, Quantity.Read(value).As(fact.Type.Dimension!.Value))
            : fact.Type.IsText ? Value.OfText(value)
            : Value.OfWords(fact.Type, value.Split('|').Aggregate(0UL, (bits, word) => bits | (1UL << fact.Type.Words.ToList().IndexOf(word))));
        return this;
    }

    private static string KindOf(string part) => part.TrimEnd('_', '1', '2', '3');

    /// <summary>A part named like each part variable, a step of <c>clean</c> for each step variable.</summary>
    public static Binding Bind(RuleBase rules, CompiledRule rule) => new([.. rule.Variables.Select(variable => variable.Kind is { } kind
        ? (object)new Part(kind.Name, kind)
        : new Step(rules.Vocabulary.Operations["clean"], new("oil_pan", rules.Vocabulary.Kinds["oil_pan"])))]);
}
