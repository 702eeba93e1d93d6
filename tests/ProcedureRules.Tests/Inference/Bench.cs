using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Tests.Inference;

/// <summary>A small invented vocabulary, rules written as objects, and situations, so that inference is tested without any text.</summary>
internal sealed class Bench
{
    private readonly List<CompiledRule> _rules = [];
    private readonly List<Operation> _operations = [];
    private readonly Dictionary<string, Part> _parts = [];

    public Bench()
    {
        Root = new Kind { Name = "part", Text = "part" };
        Vehicle = new Kind { Name = "vehicle", Text = "vehicle", Parent = Root };
        Box = new Kind { Name = "box", Text = "box", Parent = Root };
        Crate = new Kind { Name = "crate", Text = "crate", Parent = Box };
        Lid = new Kind { Name = "lid", Text = "lid", Parent = Root };
        Place = new Aspect { Kind = Root, Name = "place", States = ["fitted", "loose", "off"], Normal = 0 };
        Mark = new Aspect { Kind = Root, Name = "mark", States = ["unseen", "seen"], Normal = 0, IsMark = true };
        Covers = new Relation { Name = "covers", First = Root, Second = Root, Text = "{a} covers {b}" };
        Joins = new Relation { Name = "joins", First = Root, Second = Root, Text = "{a} joins {b}" };
        Job = new JobDefinition { Name = "renew", Text = new Snippet("Renew it"), On = Root };
    }

    public Kind Root { get; }
    public Kind Vehicle { get; }
    public Kind Box { get; }
    public Kind Crate { get; }
    public Kind Lid { get; }
    public Aspect Place { get; }
    public Aspect Mark { get; }
    public Relation Covers { get; }
    public Relation Joins { get; }
    public JobDefinition Job { get; }
    public IReadOnlyList<CompiledRule> Rules => _rules;
    public IReadOnlyList<Operation> Operations => _operations;

    public static Predicate IsA(Kind kind) => new(PredicateSort.Part, kind.Name);

    public static Predicate Related(Relation relation) => new(PredicateSort.Related, relation.Name);

    public static Predicate Leaves(Aspect aspect, string state) => new(PredicateSort.Leaves, aspect.Name, state);

    public static Predicate Reaches(Aspect aspect, string state) => new(PredicateSort.Reaches, aspect.Name, state);

    public Part Part(string name, Kind? kind = null)
    {
        if (!_parts.TryGetValue(name, out var part)) _parts.Add(name, part = new Part(name, kind ?? Root));
        return part;
    }

    public StateSet In(params string[] states) => States(Place, states);

    public static StateSet States(Aspect aspect, params string[] states) =>
        new(states.Aggregate(0UL, (bits, state) => bits | StateSet.Of(aspect.IndexOf(state)).Bits));

    /// <summary>An operation on the aspect <c>place</c>.</summary>
    public Operation Operation(
        string name, Kind on, string[] from, string to, Operation? undoes = null, Kind[]? touches = null, Kind[]? moves = null, bool movesIt = false)
    {
        var operation = new Operation
        {
            Name = name,
            On = on,
            Text = new Snippet(name),
            Place = "bay",
            Time = default,
            Phase = undoes is null ? Phase.Apart : Phase.Back,
            Changes = [new StateChange(Place, In(from), to == "before" ? -1 : Place.IndexOf(to))],
            Touches = touches ?? [],
            Moves = moves ?? [],
            MovesIt = movesIt,
            Energies = ["load"],
            Undoes = undoes,
            Undo = null,
        };
        if (undoes is not null) undoes.UndoneBy = operation;
        _operations.Add(operation);
        return operation;
    }

    public Bench Rule(string name, IReadOnlyList<Variable> variables, Pattern[] patterns, Conclusion[] conclusions, StateCondition[]? atStart = null, StateCondition[]? moments = null)
    {
        _rules.Add(new CompiledRule
        {
            Name = name,
            Pack = "bench",
            Variables = variables,
            Patterns = patterns,
            Conclusions = conclusions,
            AtStart = atStart ?? [],
            Moments = moments ?? [],
            Basis = "invented",
        });
        return this;
    }

    public static IReadOnlyList<Variable> Variables(params Kind?[] kinds) =>
        [.. kinds.Select((kind, slot) => new Variable($"v{slot}", kind is null ? Sort.Step : Sort.Part, kind, slot))];

    public static Pattern When(Predicate predicate, int first, int second = -1) => new(predicate, first, second, predicate.ToString());

    public Conclusion Need(int slot, params string[] states) =>
        new Conclusion.Need(-1, new StateCondition(slot, Place, In(states))) { IfUnknown = IfUnknown.BehindCheck };

    public static Conclusion Do(Operation operation, int slot) => new Conclusion.Do(operation, slot, -1, -1) { IfUnknown = IfUnknown.Hold };

    public static Conclusion Relate(Relation relation, int first, int second) =>
        new Conclusion.Relate(relation, first, second) { IfUnknown = IfUnknown.Do };

    public static Conclusion Stop() => new Conclusion.Stop(Say("stop")) { IfUnknown = IfUnknown.Do };

    public static Conclusion OneOf(params Conclusion[][] options) => new Conclusion.OneOf(
        [.. options.Select((then, i) => new Option(Say($"way {i}"), i, null, then, default))])
    { IfUnknown = IfUnknown.BehindCheck };

    public Vocabulary Vocabulary() => new(
        [Root, Vehicle, Box, Crate, Lid], [Place, Mark], [], [Covers, Joins], _operations, [], [Job], ["bay", "under"], ["load"]);

    public RuleBase Build() => new()
    {
        Packs = [],
        Vocabulary = Vocabulary(),
        Rules = [.. _rules],
        AuthoredCount = _rules.Count,
        Instructions = new Dictionary<Operation, Template>(),
        Whiles = [],
    };

    public Situation Situation(
        RuleBase rules,
        IEnumerable<Part> parts,
        IEnumerable<(Relation, Part, Part)>? relations = null,
        IEnumerable<Part>? jobsOn = null,
        IEnumerable<(Part Part, string State)>? states = null) => new()
        {
            Title = "bench",
            Vocabulary = rules.Vocabulary,
            Parts = [.. parts],
            Relations = [.. (relations ?? []).Select(r => new RelationStatement(r.Item1, r.Item2, r.Item3, Truth.Yes, Source.Stated))],
            Jobs = [.. (jobsOn ?? []).Select(part => new JobRequest(Job, part))],
            States = (states ?? []).ToDictionary(s => new StateVariable(s.Part, Place), s => Place.IndexOf(s.State)),
        };

    /// <summary>Infers from scratch, under the running test's cancellation.</summary>
    public static InferenceResult Infer(RuleBase rules, Situation situation) =>
        new InferenceSession(rules).Infer(situation, cancellationToken: Xunit.TestContext.Current.CancellationToken);

    /// <summary>Goes on to a situation, under the running test's cancellation.</summary>
    public static InferenceResult Update(InferenceSession session, Situation situation) =>
        session.Update(situation, cancellationToken: Xunit.TestContext.Current.CancellationToken);

    private static Template Say(string text) => new() { Text = text, Render = (_, _, _) => text };
}
