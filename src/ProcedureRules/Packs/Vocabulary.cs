namespace ProcedureRules.Packs;

/// <summary>All names that a set of packs defines, resolved. Immutable; safe on many threads.</summary>
public sealed class Vocabulary
{
    private readonly Dictionary<(Kind, string), Aspect?> _aspects = [];
    private readonly Dictionary<(Kind, string), FactDefinition> _facts = [];
    private readonly Dictionary<Kind, FactDefinition[]> _factsOfKind = [];
    private readonly Dictionary<Kind, Aspect[]> _aspectsOfKind = [];

    /// <summary>Builds a vocabulary from resolved definitions.</summary>
    public Vocabulary(
        IEnumerable<Kind> kinds,
        IEnumerable<Aspect> aspects,
        IEnumerable<FactDefinition> facts,
        IEnumerable<Relation> relations,
        IEnumerable<Operation> operations,
        IEnumerable<Cause> causes,
        IEnumerable<JobDefinition> jobs,
        IReadOnlyList<string> places,
        IReadOnlyList<string> energies)
    {
        Kinds = kinds.ToDictionary(kind => kind.Name, StringComparer.Ordinal);
        Aspects = [.. aspects];
        Facts = [.. facts];
        Relations = relations.ToDictionary(relation => relation.Name, StringComparer.Ordinal);
        Operations = operations.ToDictionary(operation => operation.Name, StringComparer.Ordinal);
        Causes = causes.ToDictionary(cause => cause.Name, StringComparer.Ordinal);
        Jobs = jobs.ToDictionary(job => job.Name, StringComparer.Ordinal);
        Places = places;
        Energies = energies;
        var aspectByOwner = Aspects.ToDictionary(aspect => (aspect.Kind, aspect.Name));
        var place = Facts.Select((fact, index) => (fact, index)).ToDictionary(pair => pair.fact, pair => pair.index);
        var factsByOwner = Facts.ToLookup(fact => fact.Kind);
        var aspectNames = Aspects.Select(aspect => aspect.Name).Distinct(StringComparer.Ordinal).ToList();
        foreach (var kind in Kinds.Values)
        {
            foreach (var name in aspectNames)
                _aspects[(kind, name)] = kind.Lineage().Select(k => aspectByOwner.GetValueOrDefault((k, name))).FirstOrDefault(a => a is not null);
            _aspectsOfKind[kind] = [.. aspectNames.Select(name => _aspects[(kind, name)]).OfType<Aspect>()];
            // Nearest first: what a kind says itself stands before what it inherits.
            var ofKind = kind.Lineage().SelectMany(k => factsByOwner[k]).Where(fact => _facts.TryAdd((kind, fact.Name), fact)).ToArray();
            Array.Sort(ofKind, (a, b) => place[a] - place[b]);
            _factsOfKind[kind] = ofKind;
        }
    }

    /// <summary>The name of the root kind, which needs no definition.</summary>
    public const string RootKind = "part";

    /// <summary>The kind of the vehicle itself; every sheet has one part of it, named the same.</summary>
    public const string VehicleKind = "vehicle";

    /// <summary>Kinds by name.</summary>
    public IReadOnlyDictionary<string, Kind> Kinds { get; }

    /// <summary>All aspects.</summary>
    public IReadOnlyList<Aspect> Aspects { get; }

    /// <summary>All facts.</summary>
    public IReadOnlyList<FactDefinition> Facts { get; }

    /// <summary>Relations by name.</summary>
    public IReadOnlyDictionary<string, Relation> Relations { get; }

    /// <summary>Operations by name.</summary>
    public IReadOnlyDictionary<string, Operation> Operations { get; }

    /// <summary>Causes by name.</summary>
    public IReadOnlyDictionary<string, Cause> Causes { get; }

    /// <summary>Jobs by name.</summary>
    public IReadOnlyDictionary<string, JobDefinition> Jobs { get; }

    /// <summary>The places a technician works at; neighbours in the list are near each other.</summary>
    public IReadOnlyList<string> Places { get; }

    /// <summary>The energies an operation can meet.</summary>
    public IReadOnlyList<string> Energies { get; }

    /// <summary>The aspect of a kind by name, its own or inherited.</summary>
    public Aspect? AspectOf(Kind kind, string name) => _aspects.GetValueOrDefault((kind, name));

    /// <summary>The fact of a kind by name, its own or inherited.</summary>
    public FactDefinition? FactOf(Kind kind, string name) => _facts.GetValueOrDefault((kind, name));

    /// <summary>The facts of a kind, its own and inherited, in the order of <see cref="Facts"/>.</summary>
    public IReadOnlyList<FactDefinition> FactsOf(Kind kind) => _factsOfKind.GetValueOrDefault(kind) ?? [];

    /// <summary>The aspects of a kind, its own and inherited.</summary>
    public IEnumerable<Aspect> AspectsOf(Kind kind) => _aspectsOfKind.GetValueOrDefault(kind) ?? [];

    /// <summary>
    /// The operations that can work on a kind and lead an aspect into one of the states; where a special kind has its own, those of
    /// more general kinds stand back.
    /// </summary>
    public IReadOnlyList<Operation> WaysTo(Kind kind, Aspect aspect, StateSet states)
    {
        var fitting = Operations.Values
            .Where(operation => operation.Undoes is null && kind.IsA(operation.On)
                && operation.Changes.Any(change => ReferenceEquals(change.Aspect, aspect) && change.To >= 0 && states.Has(change.To)))
            .ToList();
        if (fitting.Count < 2) return fitting;
        foreach (var general in kind.Lineage())
        {
            var own = fitting.Where(operation => ReferenceEquals(operation.On, general)).ToList();
            if (own.Count > 0) return own;
        }
        return fitting;
    }
}
