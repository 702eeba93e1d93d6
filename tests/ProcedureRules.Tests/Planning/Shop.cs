using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Planning;

/// <summary>
/// A small invented workshop, written in a few lines and without any YAML: kinds with aspects, operations, rules made of objects, a vehicle
/// and what is asked for. Planned through the real inference and the real beliefs.
/// </summary>
internal sealed class Shop
{
    private static readonly Kind Root = new() { Name = "part", Text = "part" };
    private readonly Dictionary<string, Kind> _kinds = new() { ["part"] = Root };
    private readonly List<Aspect> _aspects = [];
    private readonly List<FactDefinition> _facts = [];
    private readonly Dictionary<string, Operation> _operations = [];
    private readonly List<CompiledRule> _rules = [];
    private readonly List<WhileCondition> _whiles = [];
    private readonly List<Part> _parts = [];
    private readonly List<Observation> _observations = [];
    private readonly List<PartStatement> _statements = [];
    private readonly Dictionary<StateVariable, int> _states = [];
    private readonly HashSet<string> _jobs = ["job"];
    private string _job = "job";

    public Shop()
    {
        Kind("vehicle");
        Vehicle = Part("vehicle", "vehicle");
    }

    public Part Vehicle { get; }

    public Kind Kind(string name)
    {
        if (!_kinds.TryGetValue(name, out var kind)) _kinds[name] = kind = new Kind { Name = name, Text = name.Replace('_', ' '), Parent = Root };
        return kind;
    }

    /// <summary>An aspect <c>kind.name</c>; the first state is the normal one.</summary>
    public Aspect Aspect(string path, params string[] states) => Add(path, false, states);

    public Aspect Mark(string path, params string[] states) => Add(path, true, states);

    public Part Part(string name, string kind, Truth exists = Truth.Yes)
    {
        var part = new Part(name, Kind(kind));
        _parts.Add(part);
        _statements.Add(new PartStatement(part, exists, Source.Stated));
        return part;
    }

    public Part Find(string name) => _parts.Single(part => part.Name == name);

    public Shop Arrives(string part, string aspect, string state)
    {
        var found = AspectOf(Find(part).Kind, aspect);
        _states[new StateVariable(Find(part), found)] = found.IndexOf(state);
        return this;
    }

    public FactKey YesNo(string part, string name) => Fact(part, name, FactType.YesNo, null);

    public FactKey Torque(string part, string name) => Fact(part, name, FactType.Of(Dimension.Torque), Quantity.Between(1, 500, Dimension.Torque));

    public FactKey Hours(string part, string name) => Fact(part, name, FactType.Of(Dimension.Duration), Quantity.Between(0, 1e6, Dimension.Duration));

    public Shop Says(FactKey fact, Value value, Source source = Source.Stated)
    {
        _observations.Add(new Observation(fact, value, source));
        return this;
    }

    /// <summary>An operation: <c>place: fitted -> off</c>, several changes apart by a comma, several states by a bar.</summary>
    public Operation Operation(string name, string kind, string changes, string place = "bay", int minutes = 10, Phase? phase = null, string? undoes = null)
    {
        var undone = undoes is null ? null : _operations[undoes];
        var operation = new Operation
        {
            Name = name,
            On = Kind(kind),
            Text = new Snippet(name),
            Changes = [.. changes.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(change => Change(Kind(kind), change))],
            Place = place,
            Time = Quantity.Between(minutes * 60, minutes * 90, Dimension.Duration),
            Phase = phase ?? (undone is null ? Phase.Apart : Phase.Back),
            Undoes = undone,
            Pack = "shop",
            Basis = "invented",
        };
        if (undone is not null) undone.UndoneBy = operation;
        _operations[name] = operation;
        return operation;
    }

    /// <summary>An operation and the one that undoes it.</summary>
    public Shop Pair(string off, string on, string kind, string change, string place = "bay", int minutes = 10)
    {
        var parts = change.Split(':', 2);
        var ways = parts[1].Split("->");
        Operation(off, kind, change, place, minutes);
        Operation(on, kind, $"{parts[0]}: {ways[1]} -> {(ways[0].Contains('|', StringComparison.Ordinal) ? "before" : ways[0])}", place, minutes, undoes: off);
        return this;
    }

    public Shop While(string path, string state, string other, string states)
    {
        var aspect = AspectAt(path);
        var kept = AspectAt(other);
        _whiles.Add(new WhileCondition(aspect, aspect.IndexOf(state), ReferenceEquals(kept.Kind, aspect.Kind) ? null : kept.Kind, kept, States(kept, states), $"{other} is {states}"));
        return this;
    }

    /// <summary>A need of an operation.</summary>
    public Shop Needs(string operation, string path, string states, Test? when = null, IfUnknown ifUnknown = IfUnknown.BehindCheck, (string Path, string States)? at = null) =>
        AboutStep($"{operation} needs {path} {states}", operation, path, slot =>
            new Conclusion.Need(0, new StateCondition(slot, AspectAt(path), States(AspectAt(path), states))) { IfUnknown = ifUnknown }, when, at);

    /// <summary>A conclusion about each step of an operation; slot 0 is the step, 1 its part.</summary>
    public Shop About(string operation, Conclusion conclusion, Test? when = null, (string Path, string States)? at = null) =>
        AboutStep($"{operation}: {conclusion.GetType().Name} {_rules.Count}", operation, null, _ => conclusion, when, at);

    public static Conclusion Caution(string text, Signal signal = Signal.Warning, int step = 0) =>
        new Conclusion.Caution(step, signal, Say(text)) { IfUnknown = IfUnknown.Do };

    public static Conclusion Slower(double low, double high, IfUnknown ifUnknown = IfUnknown.Do) => new Conclusion.Slower(0, new ValueExpression
    {
        Text = $"{low}..{high}",
        Type = FactType.Of(Dimension.Number),
        Evaluate = (_, _) => Value.Of(FactType.Of(Dimension.Number), Quantity.Between(low, high, Dimension.Number)),
        Reads = (_, _) => [],
    })
    { IfUnknown = ifUnknown };

    public static Conclusion Figure(FactKey fact) => new Conclusion.Figure(0, 1, fact.Fact) { IfUnknown = IfUnknown.Do };

    /// <summary>A rule over two steps by their operations; slots 0 and 1 are the steps.</summary>
    public Shop Order(string first, string second, Test? when = null, (string Path, string States)? at = null) =>
        Both($"{first} before {second} {_rules.Count}", first, second, new Conclusion.Order(0, 1) { IfUnknown = IfUnknown.Do }, when, at);

    public Shop Wait(string from, string until, int minutes) =>
        Both($"wait from {from} until {until}", from, until, new Conclusion.Wait(0, 1, Constant(minutes), null, Say("let it be"), null) { IfUnknown = IfUnknown.Do }, null, null);

    public Shop Do(string operation, string part, Test? when = null, IfUnknown ifUnknown = IfUnknown.Hold) =>
        Rule($"do {operation} {part}", part, new Conclusion.Do(_operations[operation], 0, -1, -1) { IfUnknown = ifUnknown }, when);

    public Shop End(string part, string aspect, string states, Test? when = null, IfUnknown ifUnknown = IfUnknown.Hold) =>
        Rule($"end {part} {aspect}", part, new Conclusion.Need(-1, Condition(part, aspect, states)) { IfUnknown = when is null ? IfUnknown.BehindCheck : ifUnknown }, when);

    public Shop Pass(string part, string aspect, params string[] states) =>
        Rule($"pass {part} {aspect}", part, new Conclusion.Waypoints([.. states.Select(state => Condition(part, aspect, state))]) { IfUnknown = IfUnknown.Hold }, null);

    public Shop Forbid(string operation, string part, Test? when = null, IfUnknown ifUnknown = IfUnknown.Do) =>
        Rule($"forbid {operation} {part}", part, new Conclusion.ForbidWork(_operations[operation], 0) { IfUnknown = ifUnknown }, when);

    public Shop Stop(string text, Test? when = null, IfUnknown ifUnknown = IfUnknown.Do) =>
        Rule($"stop {text}", "vehicle", new Conclusion.Stop(Say(text)) { IfUnknown = ifUnknown }, when);

    public Shop Head(string text) => Rule($"head {text}", "vehicle", Caution(text, Signal.Danger, -1), null);

    /// <summary>A choice of ways, each an operation on the part, asked for by the job.</summary>
    public Shop OneOf(string name, string part, params (string Operation, int Rank, Test? If)[] ways) =>
        Rule(name, part, new Conclusion.OneOf([.. ways.Select(way => new Option(Say(way.Operation), way.Rank, way.If,
            [new Conclusion.Do(_operations[way.Operation], 0, -1, -1) { IfUnknown = IfUnknown.BehindCheck }], default))])
        { IfUnknown = IfUnknown.BehindCheck }, null);

    public static Test Yes(FactKey fact) => new()
    {
        Text = $"{fact} is yes",
        Evaluate = (beliefs, _) => beliefs.Fact(fact.Part, fact.Fact).Words switch { 1 => Truth.No, 2 => Truth.Yes, _ => Truth.Unknown },
        Reads = (_, _) => [new Reading.OfFact(fact)],
    };

    public static Test No(FactKey fact) => new()
    {
        Text = $"{fact} is no",
        Evaluate = (beliefs, _) => beliefs.Fact(fact.Part, fact.Fact).Words switch { 1 => Truth.Yes, 2 => Truth.No, _ => Truth.Unknown },
        Reads = (_, _) => [new Reading.OfFact(fact)],
    };

    /// <summary>What is asked for from here on belongs to this job.</summary>
    public Shop For(string job)
    {
        _jobs.Add(_job = job);
        return this;
    }

    public BeliefState Believe(Func<IReadOnlyList<CompiledRule>, IReadOnlyList<CompiledRule>>? shuffle = null, IReadOnlyList<string>? jobs = null)
    {
        var known = _jobs.ToDictionary(name => name, name => new JobDefinition { Name = name, Text = new Snippet($"the {name}"), On = Kind("vehicle") });
        var vocabulary = new Vocabulary(
            _kinds.Values, _aspects, _facts, [], _operations.Values, [], known.Values, ["bay", "under", "bench"], []);
        var rules = new RuleBase
        {
            Packs = [],
            Vocabulary = vocabulary,
            Rules = shuffle is null ? _rules : shuffle(_rules),
            AuthoredCount = _rules.Count,
            Instructions = _operations.Values.ToDictionary(operation => operation, operation => new Template
            {
                Text = operation.Name,
                Render = (_, binding, _) => $"{operation.Name.Replace('_', ' ')} {binding.Part(0).Text}",
            }),
            Whiles = _whiles,
        };
        var situation = new Situation
        {
            Title = "shop",
            Vocabulary = vocabulary,
            Parts = _parts,
            PartStatements = _statements,
            Observations = _observations,
            States = _states,
            Jobs = [.. (jobs ?? ["job"]).Select(name => new JobRequest(known[name], Vehicle))],
        };
        var result = new InferenceSession(rules).Infer(situation, cancellationToken: TestContext.Current.CancellationToken);
        Assert.Empty(result.Diagnostics);
        var bag = new DiagnosticBag();
        var network = BeliefNetwork.Build(result, bag);
        Assert.True(network is not null, bag.ToLines());
        return network.Initial;
    }

    public PlanResult Try(Func<IReadOnlyList<CompiledRule>, IReadOnlyList<CompiledRule>>? shuffle = null) =>
        Planner.Plan(Believe(shuffle), TestContext.Current.CancellationToken);

    public Plan Plan()
    {
        var result = Try();
        Assert.True(result.Plan is not null, string.Join('\n', result.Diagnostics.Select(diagnostic => diagnostic.ToSnippet())));
        return result.Plan;
    }

    public static Template Say(string text) => new() { Text = text, Render = (_, _, _) => text };

    private static ValueExpression Constant(int minutes) => new()
    {
        Text = $"{minutes} min",
        Type = FactType.Of(Dimension.Duration),
        Evaluate = (_, _) => Value.Of(FactType.Of(Dimension.Duration), Quantity.Point(minutes * 60, Dimension.Duration)),
        Reads = (_, _) => [],
    };

    private Aspect Add(string path, bool isMark, string[] states)
    {
        var (kind, name) = Split(path);
        var aspect = new Aspect { Kind = Kind(kind), Name = name, States = states, Normal = 0, IsMark = isMark };
        _aspects.Add(aspect);
        return aspect;
    }

    private FactKey Fact(string part, string name, FactType type, Quantity? plausible)
    {
        var fact = new FactDefinition { Kind = Find(part).Kind, Name = name, Type = type, Plausible = plausible, Ask = new Snippet($"What about {name} of {{it}}?") };
        _facts.Add(fact);
        return new FactKey(Find(part), fact);
    }

    private StateChange Change(Kind kind, string text)
    {
        var parts = text.Split(':', 2);
        var ways = parts[1].Split("->");
        var aspect = AspectOf(kind, parts[0].Trim());
        var to = ways[1].Trim();
        return new StateChange(aspect, States(aspect, ways[0]), to == "before" ? -1 : aspect.IndexOf(to));
    }

    private static StateSet States(Aspect aspect, string states) => new(states.Split('|').Aggregate(0UL, (bits, state) =>
    {
        Assert.Contains(state.Trim(), aspect.States);
        return bits | StateSet.Of(aspect.IndexOf(state.Trim())).Bits;
    }));

    private StateCondition Condition(string part, string aspect, string states)
    {
        var found = AspectOf(Find(part).Kind, aspect);
        return new StateCondition(0, found, States(found, states));
    }

    private Aspect AspectAt(string path)
    {
        var (kind, name) = Split(path);
        return AspectOf(Kind(kind), name);
    }

    private Aspect AspectOf(Kind kind, string name) => _aspects.Single(aspect => ReferenceEquals(aspect.Kind, kind) && aspect.Name == name);

    private static (string, string) Split(string path) => (path[..path.IndexOf('.', StringComparison.Ordinal)], path[(path.IndexOf('.', StringComparison.Ordinal) + 1)..]);

    // Slot 0 the step, 1 its part, 2 the part of a path on another kind.
    private Shop AboutStep(string name, string operation, string? path, Func<int, Conclusion> conclude, Test? when, (string Path, string States)? at)
    {
        var on = _operations[operation].On;
        var variables = new List<Variable> { new("s", Sort.Step, null, 0), new("it", Sort.Part, on, 1) };
        var patterns = new List<Pattern> { new(new Predicate(PredicateSort.Does, operation), 0, -1, operation), new(new Predicate(PredicateSort.On), 0, 1, operation) };
        var slot = path is null ? 1 : SlotOf(path, on, variables, patterns);
        var moments = at is { } moment ? new List<StateCondition> { new(SlotOf(moment.Path, on, variables, patterns), AspectAt(moment.Path), States(AspectAt(moment.Path), moment.States)) } : [];
        return AddRule(name, variables, patterns, conclude(slot), when, moments);
    }

    private int SlotOf(string path, Kind on, List<Variable> variables, List<Pattern> patterns)
    {
        var kind = Kind(Split(path).Item1);
        if (ReferenceEquals(kind, on)) return 1;
        var slot = variables.Count;
        variables.Add(new Variable($"v{slot}", Sort.Part, kind, slot));
        patterns.Add(new Pattern(new Predicate(PredicateSort.Part, kind.Name), slot, -1, kind.Name));
        return slot;
    }

    private Shop Both(string name, string first, string second, Conclusion conclusion, Test? when, (string Path, string States)? at)
    {
        var variables = new List<Variable> { new("a", Sort.Step, null, 0), new("b", Sort.Step, null, 1) };
        var patterns = new List<Pattern> { new(new Predicate(PredicateSort.Does, first), 0, -1, first), new(new Predicate(PredicateSort.Does, second), 1, -1, second) };
        var moments = at is { } moment ? new List<StateCondition> { new(SlotOf(moment.Path, Root, variables, patterns), AspectAt(moment.Path), States(AspectAt(moment.Path), moment.States)) } : [];
        return AddRule(name, variables, patterns, conclusion, when, moments);
    }

    private Shop Rule(string name, string part, Conclusion conclusion, Test? when)
    {
        var kind = Find(part).Kind;
        return AddRule(
            name,
            [new Variable("it", Sort.Part, kind, 0), new Variable("v", Sort.Part, Vehicle.Kind, 1)],
            [new Pattern(new Predicate(PredicateSort.Job, _job), 1, -1, _job), new Pattern(new Predicate(PredicateSort.Part, kind.Name), 0, -1, kind.Name)],
            conclusion, when, []);
    }

    private Shop AddRule(string name, IReadOnlyList<Variable> variables, IReadOnlyList<Pattern> patterns, Conclusion conclusion, Test? when, IReadOnlyList<StateCondition> moments)
    {
        _rules.Add(new CompiledRule
        {
            Name = name,
            Pack = "shop",
            Variables = variables,
            Patterns = patterns,
            Tests = when is null ? [] : [when],
            Moments = moments,
            Conclusions = [conclusion],
            Because = Say($"because of {name}"),
            Basis = "invented",
        });
        return this;
    }
}
