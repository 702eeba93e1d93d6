using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>Gathers statements and makes a situation of them; what silence means is filled in at the end.</summary>
internal sealed class SituationBuilder
{
    private readonly OrderedDictionary<string, Part> _parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Part> _silentBefore = new(StringComparer.Ordinal);
    private readonly Dictionary<Part, PartStatement> _existence = [];
    private readonly OrderedDictionary<(Relation, Part, Part), RelationStatement> _relations = [];
    private readonly OrderedDictionary<FactKey, List<Observation>> _observations = [];
    private readonly OrderedDictionary<FactKey, Doubt> _doubts = [];
    private readonly OrderedDictionary<StateVariable, int> _states = [];
    private readonly List<JobRequest> _jobs = [];
    private readonly OrderedDictionary<string, FixedWay> _ways = new(StringComparer.Ordinal);
    private readonly HashSet<string> _broken = new(StringComparer.Ordinal);

    /// <summary>Starts with the vehicle alone.</summary>
    public SituationBuilder(Vocabulary vocabulary)
    {
        Vocabulary = vocabulary;
        var kind = vocabulary.Kinds.GetValueOrDefault(Vocabulary.VehicleKind) ?? new Kind { Name = Vocabulary.VehicleKind, Text = "vehicle" };
        State(new PartStatement(new Part(Vocabulary.VehicleKind, kind), Truth.Yes, Source.Stated));
    }

    private SituationBuilder(Situation situation)
    {
        Vocabulary = situation.Vocabulary;
        var existence = situation.PartStatements.GroupBy(statement => statement.Part).ToDictionary(said => said.Key, said => said.Last());
        foreach (var part in situation.Parts)
        {
            if (existence.TryGetValue(part, out var statement) && statement.Source == Source.None)
                _silentBefore[part.Name] = part;
            else
                State(statement ?? new PartStatement(part, Truth.Yes, Source.Stated));
        }

        foreach (var relation in situation.Relations.Where(relation => relation.Source != Source.None))
            State(relation);
        foreach (var observation in situation.Observations)
            Observe(observation);
        foreach (var doubt in situation.Doubts)
            Doubt(doubt);
        foreach (var (key, state) in situation.States)
            _states[key] = state;
        _jobs.AddRange(situation.Jobs);
        foreach (var way in situation.Ways)
            Fix(way);
    }

    /// <summary>The packs' names.</summary>
    public Vocabulary Vocabulary { get; }

    /// <summary>Whether the archetype could not be read, so that parts are missing which nobody forgot.</summary>
    public bool HasGaps { get; init; }

    /// <summary>All parts, those that are stated not to be there too.</summary>
    public IEnumerable<Part> Parts => _parts.Values;

    /// <summary>Starts with what a situation holds.</summary>
    public static SituationBuilder From(Situation situation) => new(situation);

    /// <summary>Remembers a part that is written and could not be read.</summary>
    public void MarkBroken(string name) => _broken.Add(name);

    /// <summary>Whether a part of that name is written and could not be read.</summary>
    public bool IsBroken(string name) => _broken.Contains(name);

    /// <summary>The part of a name, or null.</summary>
    public Part? Find(string name) => _parts.GetValueOrDefault(name);

    /// <summary>What is stated of a part.</summary>
    public PartStatement StatementOn(Part part) => _existence[part];

    /// <summary>The parts of a kind that are there or may be.</summary>
    public IEnumerable<Part> PartsOf(Kind kind) => _parts.Values.Where(part => part.Kind.IsA(kind) && _existence[part].Exists != Truth.No);

    /// <summary>States a part; the last statement on a name counts.</summary>
    public void State(PartStatement statement)
    {
        if (_parts.TryGetValue(statement.Part.Name, out var before))
            _existence.Remove(before);
        _parts[statement.Part.Name] = statement.Part;
        _existence[statement.Part] = statement;
    }

    /// <summary>States a relation; the last statement on a pair counts.</summary>
    public void State(RelationStatement statement) => _relations[(statement.Relation, statement.A, statement.B)] = statement;

    /// <summary>Adds an observation; it settles a doubt about the same fact, unless that came from a better source.</summary>
    public void Observe(Observation observation)
    {
        if (_doubts.TryGetValue(observation.Fact, out var doubt) && doubt.Source <= observation.Source)
            _doubts.Remove(observation.Fact);
        if (!_observations.TryGetValue(observation.Fact, out var all))
            _observations[observation.Fact] = all = [];
        all.Add(observation);
    }

    /// <summary>Adds a reading as it is written: as an observation, or after a complaint as a doubt.</summary>
    public void Take(Observation observation, string written, DiagnosticBag bag)
    {
        if (Plausibility.Of(observation, written, bag) is { } doubt)
            Doubt(doubt);
        else
            Observe(observation);
    }

    /// <summary>Adds a doubt, unless a better source has spoken.</summary>
    public void Doubt(Doubt doubt)
    {
        if (!_observations.TryGetValue(doubt.Fact, out var all) || all.TrueForAll(observation => observation.Source <= doubt.Source))
            _doubts[doubt.Fact] = doubt;
    }

    /// <summary>Takes observations of a fact back, and what is doubted of it.</summary>
    public void Forget(FactKey fact, Func<Observation, bool> which)
    {
        _doubts.Remove(fact);
        if (_observations.TryGetValue(fact, out var all))
            all.RemoveAll(observation => which(observation));
    }

    /// <summary>States the state of an aspect now.</summary>
    public void SetState(Part part, Aspect aspect, int state) => _states[new StateVariable(part, aspect)] = state;

    /// <summary>Asks for a job.</summary>
    public void Ask(JobRequest job) => _jobs.Add(job);

    /// <summary>Fixes the way of a choice; the last one counts.</summary>
    public void Fix(FixedWay way) => _ways[way.Choice] = way;

    /// <summary>Adds what nothing is stated of: the parts that go with those there are, then one for each kind whose silence means unknown.</summary>
    public void AddSilentParts()
    {
        AddCompany();
        // The most special kinds first: a part of one of them speaks for the more general kinds.
        foreach (var kind in Vocabulary.Kinds.Values.Where(kind => kind.IfSilent == Truth.Unknown).OrderByDescending(kind => kind.Lineage().Count()))
        {
            if (!_parts.Values.Any(part => part.Kind.IsA(kind)) && !_parts.ContainsKey(kind.Name))
                State(new PartStatement(SilentPart(kind), Truth.Unknown, Source.None));
        }
    }

    /// <summary>The situation; what is said of parts that are not there is left out.</summary>
    public Situation Build(string title)
    {
        AddSilentParts();
        AddSilentRelations();
        var parts = _parts.Values.OrderBy(part => _existence[part].Source == Source.None).ToList();
        return new Situation
        {
            Title = title,
            Vocabulary = Vocabulary,
            Parts = parts,
            PartStatements = [.. parts.Select(part => _existence[part])],
            Relations = [.. _relations.Values.Where(relation => IsThere(relation.A) && IsThere(relation.B))],
            Observations = [.. _observations.Values.SelectMany(all => all).Where(observation => IsThere(observation.Fact.Part))],
            Doubts = [.. _doubts.Values.Where(doubt => IsThere(doubt.Fact.Part))],
            States = _states.Where(state => state.Value != state.Key.Aspect.Normal && IsThere(state.Key.Part)).ToDictionary(),
            Jobs = [.. _jobs.Where(job => IsThere(job.On))],
            Ways = [.. _ways.Values],
        };
    }

    private void AddCompany()
    {
        var open = new Queue<Part>(_parts.Values.Where(part => _existence[part].Exists == Truth.Yes));
        while (open.TryDequeue(out var part))
            foreach (var kind in part.Kind.Lineage().SelectMany(kind => kind.GoesWith))
            {
                if (_parts.ContainsKey(kind.Name) || _parts.Values.Any(other => other.Kind.IsA(kind))) continue;
                var company = new Part(kind.Name, kind);
                State(new PartStatement(company, Truth.Yes, Source.Assumed));
                open.Enqueue(company);
            }
    }

    private Part SilentPart(Kind kind) => _silentBefore.GetValueOrDefault(kind.Name) ?? new Part(kind.Name, kind);

    private void AddSilentRelations()
    {
        foreach (var relation in Vocabulary.Relations.Values.Where(relation => relation.IfSilent == Truth.Unknown))
        {
            var seconds = PartsOf(relation.Second).ToList();
            foreach (var a in PartsOf(relation.First).ToList())
            {
                foreach (var b in seconds.Where(b => !ReferenceEquals(a, b) && !_relations.ContainsKey((relation, a, b))))
                    State(new RelationStatement(relation, a, b, Truth.Unknown, Source.None));
            }
        }
    }

    private bool IsThere(Part part) => _existence.TryGetValue(part, out var statement) && statement.Exists != Truth.No;
}
