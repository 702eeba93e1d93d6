using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>Numbers the nodes of a network and collects its edges: first all nodes, since their numbers hang on how many there are, then the edges.</summary>
internal sealed class GraphBuilder : IReadings
{
    // What a record of common packs has; more only costs a list that grows.
    private const int EdgesARecord = 12;

    private readonly Situation _situation;
    private readonly NodeIndex _nodes;
    private readonly Func<Kind, IReadOnlyList<Part>> _partsOf;
    private readonly RowsBuilder<int> _premises;
    private readonly RowsBuilder<NodeRef> _testReads;
    private readonly RowsBuilder<NodeRef> _valueReads;
    private readonly List<NodeRef> _targets;
    private readonly RowsBuilder<int> _rankedBy;
    private readonly List<(int, (int, int))> _supports;
    private readonly List<(int, int)> _contributors;
    private readonly List<(int Reader, int Read)> _reads;
    private readonly List<(int, int)> _successors;
    private RowsBuilder<NodeRef> _readInto;

    public GraphBuilder(InferenceResult result, PartsByKind parts)
    {
        var count = result.Records.Count;
        _situation = result.Situation;
        _nodes = new(result.Records);
        _partsOf = parts.Of;
        _premises = new(count, 3 * count);
        _testReads = new(count, 2 * count);
        _valueReads = new(count, count);
        _targets = new(count);
        _rankedBy = new(count, 3 * count);
        _supports = new(count);
        _contributors = new(count);
        _reads = new(2 * count);
        _successors = new(EdgesARecord * count);
        _readInto = _testReads;
    }

    /// <summary>The graph.</summary>
    public Graph Build()
    {
        for (var r = 0; r < _nodes.Records.Count; r++) AddNodes(r, _nodes.Records[r]);
        AddStatedNodes();
        for (var r = 0; r < _nodes.Records.Count; r++) AddEdges(r);
        var hasEvidence = new bool[_nodes.Contributions.Count];
        for (var c = 0; c < hasEvidence.Length; c++) hasEvidence[c] = AddEdges(c, _nodes.Contributions[c]);
        return new()
        {
            Nodes = _nodes,
            Premises = _premises.ToRows(),
            Supports = Rows<(int, int)>.Of(_nodes.Atoms.Count, _supports),
            Contributors = Rows<int>.Of(_nodes.NodeCount, _contributors),
            ValueReads = NodesOf(_valueReads),
            RankedBy = _rankedBy.ToRows(),
            HasEvidence = hasEvidence,
            Reads = _reads,
            Successors = Rows<int>.Of(_nodes.NodeCount, _successors),
        };
    }

    void IReadings.OfFact(Part part, FactDefinition fact) => _readInto.AddNew(_nodes.Add(new FactKey(part, fact)));

    void IReadings.OfDemand(Part part, FactDefinition fact) => _readInto.AddNew(_nodes.AddDemand(new(part, fact)));

    void IReadings.OfRelation(Relation relation, Part a, Part b) => _readInto.AddNew(_nodes.Add(new Atom.Related(relation, a, b)));

    void IReadings.OfPart(Part part) => _readInto.AddNew(_nodes.Add(new Atom.Exists(part)));

    private void AddNodes(int index, Record record)
    {
        _premises.Begin();
        for (var p = 0; p < record.Premises.Count; p++) _premises.Add(_nodes.Add(record.Premises[p]).Index);
        _testReads.Begin();
        _readInto = _testReads;
        for (var t = 0; t < record.Tests.Count; t++) Read(record.Tests[t].TellReads, record.Tests[t].Reads, record.Binding);
        for (var e = 0; e < record.Effects.Count; e++)
        {
            var effect = record.Effects[e];
            var value = Contribution.ValueOf(effect);
            if (effect.Atom is { } atom && _nodes.Add(atom) is var node && atom is not Atom.Related)
                _supports.Add((node.Index, (index, e)));
            if (value is null && effect.Atom is not Atom.Related) continue;
            _nodes.Add(new Contribution(index, e, effect, value));
            _targets.Add(TargetOf(effect, record));
            _valueReads.Begin();
            _readInto = _valueReads;
            if (value is not null) Read(value.TellReads, value.Reads, record.Binding);
        }
    }

    private NodeRef TargetOf(Effect effect, Record record) => effect switch
    {
        { Atom: Atom.Related atom } => _nodes.Add(atom),
        { Conclusion: Conclusion.Demand, Fact: { } fact } => _nodes.AddDemand(fact),
        { Fact: { } fact } => _nodes.Add(fact),
        _ => throw new InvalidOperationException($"an effect of '{record}' sets a fact but names none"),
    };

    private void Read(
        Action<IReadings, Binding, Func<Kind, IReadOnlyList<Part>>>? tell,
        Func<Binding, Func<Kind, IReadOnlyList<Part>>, IEnumerable<Reading>> reads,
        Binding binding)
    {
        if (tell is not null)
        {
            tell(this, binding, _partsOf);
            return;
        }

        IReadings into = this;
        foreach (var reading in reads(binding, _partsOf))
        {
            if (reading is Reading.OfFact fact) into.OfFact(fact.Key.Part, fact.Key.Fact);
            else if (reading is Reading.OfDemand demand) into.OfDemand(demand.Key.Part, demand.Key.Fact);
            else if (reading is Reading.OfRelation related) into.OfRelation(related.Relation, related.A, related.B);
            else into.OfPart(((Reading.OfPart)reading).Part);
        }
    }

    // Everything that the situation could be asked about, so that a supposition finds its node.
    private void AddStatedNodes()
    {
        foreach (var statement in _situation.Relations) _nodes.Add(new Atom.Related(statement.Relation, statement.A, statement.B));
        foreach (var observation in _situation.Observations) _nodes.Add(observation.Fact);
        foreach (var part in _situation.Parts)
        {
            _nodes.Add(new Atom.Exists(part));
            foreach (var fact in _situation.Vocabulary.FactsOf(part.Kind)) _nodes.Add(new FactKey(part, fact));
        }
    }

    private void AddEdges(int index)
    {
        var node = _nodes.RecordNode(index);
        foreach (var premise in _premises[index]) _successors.Add((premise, node));
        foreach (var read in _testReads[index]) AddRead(node, _nodes.NodeOf(read));
        var effects = _nodes.Records[index].Effects;
        for (var e = 0; e < effects.Count; e++)
            if (effects[e].Atom is { } atom and not Atom.Related) _successors.Add((node, _nodes.Of(atom)));
    }

    private bool AddEdges(int index, Contribution contribution)
    {
        var node = _nodes.ContributionNode(index);
        var testReads = _testReads[contribution.Record];
        var valueReads = _valueReads[index];
        _successors.Add((_nodes.RecordNode(contribution.Record), node));
        _rankedBy.Begin();
        foreach (var read in valueReads) AddRead(node, _nodes.NodeOf(read));
        foreach (var read in testReads) AddRank(node, _nodes.NodeOf(read));
        foreach (var read in valueReads) AddRank(node, _nodes.NodeOf(read));
        var hasEvidence = testReads.Length + valueReads.Length > 0;
        foreach (var premise in _premises[contribution.Record])
        {
            var atom = _nodes.Atoms[premise];
            if (atom is Atom.Related) hasEvidence = true;

            // Who read a fact of a part has seen the part: its existence does not weaken what follows from that reading.
            if (atom is Atom.Related || (atom is Atom.Exists exists && !Reads(testReads, exists.Part) && !Reads(valueReads, exists.Part)))
                AddRank(node, premise);
        }

        var target = _nodes.NodeOf(_targets[index]);
        _contributors.Add((target, index));
        _successors.Add((node, target));
        return hasEvidence;
    }

    private bool Reads(ReadOnlySpan<NodeRef> reads, Part part)
    {
        foreach (var read in reads)
            if (read.Sort == NodeSort.Fact && ReferenceEquals(_nodes.Facts[read.Index].Part, part)) return true;
        return false;
    }

    private void AddRank(int contribution, int source)
    {
        _rankedBy.Add(source);
        _successors.Add((source, contribution));
    }

    private void AddRead(int reader, int read)
    {
        _reads.Add((reader, read));
        _successors.Add((read, reader));
    }

    private Rows<int> NodesOf(RowsBuilder<NodeRef> rows)
    {
        var nodes = new RowsBuilder<int>(rows.Count, rows.Count);
        for (var row = 0; row < rows.Count; row++)
        {
            nodes.Begin();
            foreach (var node in rows[row]) nodes.Add(_nodes.NodeOf(node));
        }

        return nodes.ToRows();
    }
}
