using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>The records of a situation as a network: what rests on what, and where to find it. Immutable; safe on many threads.</summary>
public sealed class BeliefNetwork
{
    private readonly PartsByKind _parts;
    private readonly EffectIndex _effects;
    private readonly Lazy<ReadingIndex> _readings;
    private readonly Dictionary<ChoiceKey, List<int>> _options = [];

    private BeliefNetwork(InferenceResult result, PartsByKind parts, Graph graph, Strata strata)
    {
        Result = result;
        Graph = graph;
        Strata = strata;
        _parts = parts;
        _effects = new(graph.Nodes);
        _readings = new(() => new(result.Records, parts.Of));
        for (var atom = 0; atom < graph.Nodes.Atoms.Count; atom++)
        {
            if (graph.Nodes.Atoms[atom] is not Atom.Chosen chosen) continue;
            if (!_options.TryGetValue(chosen.Choice, out var options)) _options[chosen.Choice] = options = [];
            options.Add(atom);
        }

        Initial = BeliefState.From(this);
    }

    /// <summary>What it was built from.</summary>
    public InferenceResult Result { get; }

    /// <summary>The beliefs under the situation as stated, every choice open.</summary>
    public BeliefState Initial { get; }

    /// <summary>The records, in the order of inference.</summary>
    public IReadOnlyList<Record> Records => Result.Records;

    internal Graph Graph { get; }

    internal Strata Strata { get; }

    /// <summary>Builds the network.</summary>
    /// <param name="result">The records.</param>
    /// <param name="diagnostics">Where a rule that reads what hangs on its own conclusion is reported.</param>
    /// <returns>The network; null where such a rule was found.</returns>
    public static BeliefNetwork? Build(InferenceResult result, DiagnosticBag diagnostics)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(diagnostics);
        result = Fulfilled.Without(result);
        var parts = new PartsByKind(result.Situation);
        var graph = new GraphBuilder(result, parts).Build();
        var strata = Strata.Of(graph.Nodes.NodeCount, graph.Successors);
        return new RingFinder(graph, strata, parts).Report(diagnostics) ? null : new(result, parts, graph, strata);
    }

    /// <summary>The effects that conclude an atom, in the order of the records.</summary>
    public IReadOnlyList<RecordEffect> RecordsSupporting(Atom atom) => _effects.Supporting(atom);

    /// <summary>The effects with a conclusion of a type, in the order of the records.</summary>
    public IReadOnlyList<RecordEffect> RecordsWith<TConclusion>() where TConclusion : Conclusion => _effects.With(typeof(TConclusion));

    /// <summary>The atoms of a type, those of the records first and in their order.</summary>
    public IReadOnlyList<TAtom> AtomsOf<TAtom>() where TAtom : Atom => _effects.AtomsOf<TAtom>();

    /// <summary>The effects attached to a step: its needs, cautions, checks, tools, order, waits.</summary>
    public IReadOnlyList<RecordEffect> RecordsAbout(Step step) => _effects.About(step);

    /// <summary>The effects that set a fact, or demand something of it.</summary>
    internal IReadOnlyList<RecordEffect> Setting(FactKey key) => _effects.Setting(key);

    /// <summary>The effects that forbid a step.</summary>
    internal IReadOnlyList<RecordEffect> Forbidding(Step step) => _effects.Forbidding(step);

    /// <summary>The effects that forbid states of a part.</summary>
    internal IReadOnlyList<RecordEffect> ForbiddingStatesOf(Part part) => _effects.ForbiddingStatesOf(part);

    /// <summary>The records that a key matters to: read by a test, a value, limits or a figure, or premised.</summary>
    public IReadOnlyList<Record> Readers(Reading reading) => _readings.Value.ReadersOf(reading);

    /// <summary>The keys that matter to a record; <see cref="Readers"/> the other way round.</summary>
    public IReadOnlyList<Reading> ReadingsOf(Record record) => _readings.Value.Of(record);

    /// <summary>The parts of a kind that exist or may, as stated.</summary>
    public IReadOnlyList<Part> PartsOf(Kind kind) => _parts.Of(kind);

    /// <summary>
    /// Whether the records answer for a supposition. They do not where something comes in that inference took to be out: a part or relation
    /// that was surely not there. That takes a new inference.
    /// </summary>
    public bool Covers(Supposition supposition) => supposition switch
    {
        Supposition.Observed observed => Graph.Nodes.Of(observed.Key) >= 0,
        Supposition.PartExists exists => exists.Truth == Truth.No || WasPossible(new Atom.Exists(exists.Part)),
        Supposition.RelationHolds holds => holds.Truth == Truth.No || WasPossible(new Atom.Related(holds.Relation, holds.A, holds.B)),
        Supposition.JobAsked asked => Graph.Nodes.Of(new Atom.Asked(asked.Request)) >= 0,
        Supposition.Takes takes => OptionsOf(takes.Choice).Count > 0,
        _ => false,
    };

    /// <summary>The atoms of the options of a choice, by their nodes.</summary>
    internal IReadOnlyList<int> OptionsOf(ChoiceKey choice) => _options.GetValueOrDefault(choice, []);

    private bool WasPossible(Atom atom) => Initial.Available(atom) > Assurance.No;
}
