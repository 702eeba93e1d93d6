using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using Xunit;
using Record = ProcedureRules.Inference.Record;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>A small situation and records made by hand, as inference would hand them over.</summary>
internal sealed class World
{
    private static readonly Kind Root = new() { Name = "part", Text = "part" };
    private static readonly FactType Length = FactType.Of(Dimension.Length);
    public static Aspect Height { get; } = new() { Kind = Root, Name = "height", States = ["down", "raised"], Normal = 0 };
    private readonly List<Kind> _kinds = [Root];
    private readonly List<FactDefinition> _facts = [];
    private readonly Dictionary<string, Relation> _relations = [];
    private readonly Dictionary<string, Step> _steps = [];
    private int _rules;

    public World() => Vehicle = Part("vehicle");

    public Part Vehicle { get; }

    public List<Part> Parts { get; } = [];

    public List<PartStatement> PartStatements { get; } = [];

    public List<RelationStatement> Relations { get; } = [];

    public List<Observation> Observations { get; } = [];

    public List<JobRequest> Jobs { get; } = [];

    public List<Record> Records { get; } = [];

    public static Value Millimetres(double low, double? high = null) => Value.Of(
        Length, Quantity.Hull(Quantity.Of(low, "mm"), Quantity.Of(high ?? low, "mm")));

    public Part Part(string name, Truth exists = Truth.Yes, Source source = Source.Stated)
    {
        var kind = new Kind { Name = name, Text = name, Parent = Root };
        var part = new Part(name, kind);
        _kinds.Add(kind);
        Parts.Add(part);
        PartStatements.Add(new(part, exists, source));
        return part;
    }

    public FactKey YesNo(string name, Part? part = null) => Fact(name, part, FactType.YesNo, null);

    public FactKey Words(string name, params string[] words) => Fact(name, null, FactType.OneOf(words), null);

    public FactKey Gap(string name, Part? part = null) => Fact(name, part, Length, Millimetres(0, 10).Quantity);

    public Relation Relation(string name)
    {
        if (!_relations.TryGetValue(name, out var relation))
            _relations[name] = relation = new() { Name = name, First = Root, Second = Root, Text = name };
        return relation;
    }

    /// <summary>A step, which serves as a proposition without inner structure.</summary>
    public Step Step(string name, Part? part = null)
    {
        if (!_steps.TryGetValue(name, out var step))
        {
            _steps[name] = step = new(
                new() { Name = name, On = Root, Text = new(name), Place = "bay", Time = Quantity.Of(1, "min"), Phase = Phase.Work },
                part ?? Vehicle);
        }

        return step;
    }

    public Atom Does(string name) => new Atom.Occurs(Step(name));

    public World Observe(FactKey fact, Value value, Source source = Source.Stated)
    {
        Observations.Add(new(fact, value, source));
        return this;
    }

    public World Observe(FactKey fact, bool yes, Source source = Source.Stated) => Observe(fact, Value.Of(yes), source);

    public World State(Relation relation, Part a, Part b, Truth holds, Source source = Source.Stated)
    {
        Relations.Add(new(relation, a, b, holds, source));
        return this;
    }

    public Record Rule(IEnumerable<Atom> premises, IEnumerable<Test> tests, params Effect[] effects) =>
        Rule(premises, tests, false, effects);

    public Record Rule(IEnumerable<Atom> premises, IEnumerable<Test> tests, bool onMoment, params Effect[] effects)
    {
        var record = new Record
        {
            Mechanism = Mechanism.Rule,
            Rule = new()
            {
                Name = $"rule {++_rules}",
                Pack = "test",
                Variables = [],
                Patterns = [],
                Conclusions = [.. effects.Where(effect => effect.Conclusion is not null).Select(effect => effect.Conclusion!)],
            },
            Binding = new([Vehicle]),
            Premises = [.. premises],
            Tests = [.. tests],
            Moments = onMoment ? [new(Vehicle, Height, StateSet.Of(1))] : [],
            Effects = effects,
        };
        Records.Add(record);
        return record;
    }

    public static Effect Conclude(Atom atom, IfUnknown ifUnknown = IfUnknown.BehindCheck) => new(null, atom, null, ifUnknown);

    public static Effect Set(FactKey fact, ValueExpression value) => new(
        new Conclusion.Set(0, fact.Fact, value) { IfUnknown = IfUnknown.Do }, null, fact, IfUnknown.Do);

    public static Effect Set(FactKey fact, bool yes) => Set(fact, Say.Constant(Value.Of(yes)));

    public static Effect AtLeast(FactKey fact, ValueExpression value) => new(
        new Conclusion.Demand(0, fact.Fact, value, false) { IfUnknown = IfUnknown.Do }, null, fact, IfUnknown.Do);

    public static Effect AtMost(FactKey fact, ValueExpression value) => new(
        new Conclusion.Demand(0, fact.Fact, value, true) { IfUnknown = IfUnknown.Do }, null, fact, IfUnknown.Do);

    public InferenceResult Result()
    {
        var vocabulary = new Vocabulary(_kinds, [], _facts, _relations.Values, [], [], [], ["bay"], []);
        return new()
        {
            Situation = new()
            {
                Title = "test",
                Vocabulary = vocabulary,
                Parts = Parts,
                PartStatements = [.. PartStatements],
                Relations = [.. Relations],
                Observations = [.. Observations],
                Jobs = [.. Jobs],
            },
            Rules = new()
            {
                Packs = [],
                Vocabulary = vocabulary,
                Rules = [],
                AuthoredCount = 0,
                Instructions = new Dictionary<Operation, Template>(),
                Whiles = [],
            },
            Records = [.. Records],
        };
    }

    public BeliefState Believe()
    {
        var diagnostics = new DiagnosticBag();
        var network = BeliefNetwork.Build(Result(), diagnostics);
        Assert.True(network is not null, diagnostics.ToLines());
        return network.Initial;
    }

    private FactKey Fact(string name, Part? part, FactType type, Quantity? range)
    {
        var owner = part ?? Vehicle;
        var definition = new FactDefinition { Kind = owner.Kind, Name = name, Type = type, Plausible = range, Ask = new(name) };
        _facts.Add(definition);
        return new(owner, definition);
    }
}
