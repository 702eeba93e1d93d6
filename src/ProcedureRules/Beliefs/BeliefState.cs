using System.Collections.Concurrent;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Beliefs;

/// <summary>What is believed under one set of statements and choices. Immutable; safe on many threads; shares its network.</summary>
public sealed class BeliefState : IBeliefs
{
    private readonly NodeIndex _nodes;
    private readonly Labels _labels;

    private BeliefState(BeliefNetwork network, Labels labels, bool isTentative = false)
    {
        Network = network;
        IsTentative = isTentative;
        _nodes = network.Graph.Nodes;
        _labels = labels;
    }

    /// <summary>The network.</summary>
    public BeliefNetwork Network { get; }

    /// <summary>Facts, relations and parts whose best ranked statements contradict each other.</summary>
    public IReadOnlyList<Conflict> Conflicts => field ??= Trouble.ConflictsIn(Network.Graph, _labels, Network.Result.Situation);

    /// <summary>Facts whose sure demands leave no value.</summary>
    public IReadOnlyList<EmptyBand> EmptyBands => field ??= Trouble.EmptyBandsIn(Network.Graph, _labels);

    /// <summary>How firmly an atom stands without any condition on a moment of the plan.</summary>
    public Assurance Required(Atom atom) => LabelOf(atom).Required;

    /// <summary>How firmly an atom stands where conditions on moments are taken as met.</summary>
    public Assurance Available(Atom atom) => LabelOf(atom).Available;

    /// <summary>Yes: required sure; no: not even available; else unknown.</summary>
    public Truth TruthOf(Atom atom) => LabelOf(atom).Truth;

    /// <summary>How firmly an effect stands without any condition on a moment (in a record with such a condition: not at all).</summary>
    public Assurance Required(Record record, int effect) => LabelOf(record).Required(record, record.Effects[effect]);

    /// <summary>How firmly an effect stands where conditions on moments are taken as met.</summary>
    public Assurance Available(Record record, int effect) => LabelOf(record).Available(record.Effects[effect]);

    /// <summary>How firmly an effect stands once a step occurs (and so its part exists), where conditions on moments are taken as met.</summary>
    public Assurance Given(Record record, int effect, Step step) => GivenStep.Level(this, record, effect, step);

    /// <summary>What is possibly said of a step once it occurs. Kept, since all of planning asks for it.</summary>
    internal IReadOnlyList<Said> SaidOf(Step step)
    {
        if (Told.TryGetValue(step, out var said)) return said;
        var found = new List<Said>();
        foreach (var source in Network.RecordsAbout(step))
            if (Given(source.Record, source.Index, step) is var level && level != Assurance.No) found.Add(new Said(source, level));
        return Told[step] = found;
    }

    /// <summary>The truth of one of a record's tests.</summary>
    public Truth TruthOf(Record record, int test) => record.Tests[test].Evaluate(this, record.Binding);

    /// <summary>The rank that the merged value of a fact surely has; none where it is not known.</summary>
    public Source SourceOf(FactKey key) => _nodes.Of(key) is var index and >= 0 ? _labels.Facts[index].Rank.Low : Source.None;

    /// <summary>The observations of a fact.</summary>
    public IReadOnlyList<Observation> Observations(FactKey key) => _nodes.Of(key) is var index and >= 0 ? _labels.Observations[index] : [];

    /// <summary>The demands on a fact.</summary>
    public DemandBand Demands(FactKey key) => _nodes.OfDemand(key) is var index and >= 0 ? _labels.Demands[index].Band : default;

    /// <summary>The option of a choice that is taken; null while it is open.</summary>
    public int? Taken(ChoiceKey choice)
    {
        foreach (var option in Network.OptionsOf(choice))
            if (_labels.Inputs[option].Level == Assurance.Sure) return ((Atom.Chosen)_nodes.Atoms[option]).Option;
        return null;
    }

    /// <summary>The beliefs with some inputs changed, one after the other. What <see cref="BeliefNetwork.Covers"/> denies has no effect on records.</summary>
    public BeliefState With(IReadOnlyList<Supposition> suppositions)
    {
        ArgumentNullException.ThrowIfNull(suppositions);
        var labels = _labels.Fork();
        var state = new BeliefState(Network, labels, IsTentative);
        var propagation = new Propagation(Network.Graph, Network.Strata, labels, state, _labels);
        var inputs = new Inputs(Network, labels);
        foreach (var supposition in suppositions)
            foreach (var node in inputs.Apply(supposition)) propagation.Touch(node);
        propagation.Run();
        return state;
    }

    /// <inheritdoc/>
    public Value Fact(Part part, FactDefinition fact) =>
        _nodes.Of(new FactKey(part, fact)) is var index and >= 0 ? _labels.Facts[index].Value : Value.Unknown(fact);

    /// <inheritdoc/>
    public Quantity Demanded(Part part, FactDefinition fact) => _nodes.OfDemand(new FactKey(part, fact)) is var index and >= 0
        ? _labels.Demands[index].Demanded
        : new DemandMerge(fact).ToLabel().Demanded;

    /// <inheritdoc/>
    public Quantity Allowed(Part part, FactDefinition fact) => _nodes.OfDemand(new FactKey(part, fact)) is var index and >= 0
        ? _labels.Demands[index].Allowed
        : new DemandMerge(fact).ToLabel().Allowed;

    /// <inheritdoc/>
    public Truth Related(Relation relation, Part a, Part b) => TruthOf(new Atom.Related(relation, a, b));

    /// <inheritdoc/>
    public Truth Exists(Part part) => TruthOf(new Atom.Exists(part));

    /// <inheritdoc/>
    public IReadOnlyList<Part> PartsOf(Kind kind) => Network.PartsOf(kind);

    /// <summary>The beliefs under the situation as stated.</summary>
    internal static BeliefState From(BeliefNetwork network)
    {
        var labels = new Labels(network.Graph);
        var state = new BeliefState(network, labels);
        new Inputs(network, labels).SetAll();
        var propagation = new Propagation(network.Graph, network.Strata, labels, state, null);
        propagation.TouchAll();
        propagation.Run();
        return state;
    }

    /// <summary>Whether what only may stop or forbid work is not in its way: what is planned then holds before it.</summary>
    internal bool IsTentative { get; }

    /// <summary>The same beliefs, tentative or not.</summary>
    internal BeliefState Tentatively(bool isTentative) => isTentative == IsTentative ? this : new BeliefState(Network, _labels, isTentative);

    /// <summary>The atoms that stand otherwise than under other beliefs on this network.</summary>
    internal IEnumerable<Atom> AtomsUnlike(BeliefState other) => _labels.Atoms.DifferencesFrom(other._labels.Atoms).Select(index => _nodes.Atoms[index]);

    /// <summary>The records that stand otherwise than under other beliefs on this network.</summary>
    internal IEnumerable<Record> RecordsUnlike(BeliefState other) => _labels.Records.DifferencesFrom(other._labels.Records).Select(index => _nodes.Records[index]);

    /// <summary>What has a purpose besides answering questions.</summary>
    internal Purposes Purposes => field ??= PurposesWith(null);

    /// <summary>What has a purpose where one step is done that only finds something out.</summary>
    internal Purposes PurposesWith(Step? check) => new(Network.Graph, _labels, check);

    /// <summary>What sets a fact that only rules set, or demands something of one: the records that possibly do.</summary>
    internal IEnumerable<Record> SettersOf(FactKey key)
    {
        foreach (var effect in Network.Setting(key))
            if (Available(effect.Record, effect.Index) > Assurance.No) yield return effect.Record;
    }

    /// <summary>How firmly an atom is stated, without any record.</summary>
    internal Assurance Stated(Atom atom) => _nodes.Of(atom) is var index and >= 0 ? _labels.Inputs[index].Level : Assurance.No;

    /// <summary>Where the statements on an atom come from.</summary>
    internal Source SourceOf(Atom atom) => _nodes.Of(atom) is var index and >= 0 ? _labels.Inputs[index].Source : Source.None;

    /// <summary>The nodes of the atoms that a record rests on.</summary>
    internal ReadOnlySpan<int> PremisesOf(Record record) => Network.Graph.Premises[_nodes.Of(record)];

    /// <summary>How firmly the atom of a node stands where conditions on moments are taken as met.</summary>
    internal Assurance AvailableAt(int atom) => _labels.Atoms[atom].Available;

    internal RecordLabel LabelOf(Record record) => _labels.Records[_nodes.Of(record)];

    private ConcurrentDictionary<Step, IReadOnlyList<Said>> Told => field ??= [];

    private AtomLabel LabelOf(Atom atom) => _nodes.Of(atom) is var index and >= 0 ? _labels.Atoms[index] : default;
}
