using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>Numbers the nodes of a network and collects its edges.</summary>
internal sealed class GraphBuilder
{
    private readonly Situation _situation;
    private readonly NodeIndex _nodes;
    private readonly PartsByKind _parts;
    private readonly List<(int, int)> _premises = [];
    private readonly List<(int, (int, int))> _supports = [];
    private readonly List<(int, int)> _contributors = [];
    private readonly List<(int, int)> _valueReads = [];
    private readonly List<(int, int)> _rankedBy = [];
    private readonly List<(int Reader, int Read)> _reads = [];
    private readonly List<(int, int)> _successors = [];

    public GraphBuilder(InferenceResult result, PartsByKind parts)
    {
        _situation = result.Situation;
        _nodes = new(result.Records);
        _parts = parts;
    }

    /// <summary>The graph.</summary>
    public Graph Build()
    {
        var testReads = _nodes.Records.Select(NodesReadByTests).ToList();
        for (var r = 0; r < _nodes.Records.Count; r++) AddNodes(r, _nodes.Records[r]);
        var valueReads = _nodes.Contributions.Select(NodesReadByValue).ToList();
        AddStatedNodes();

        for (var r = 0; r < _nodes.Records.Count; r++) AddEdges(r, testReads[r]);
        var hasEvidence = new bool[_nodes.Contributions.Count];
        for (var c = 0; c < hasEvidence.Length; c++)
            hasEvidence[c] = AddEdges(c, _nodes.Contributions[c], testReads[_nodes.Contributions[c].Record], valueReads[c]);

        return new()
        {
            Nodes = _nodes,
            Premises = Rows<int>.Of(_nodes.Records.Count, _premises),
            Supports = Rows<(int, int)>.Of(_nodes.Atoms.Count, _supports),
            Contributors = Rows<int>.Of(_nodes.NodeCount, _contributors),
            ValueReads = Rows<int>.Of(hasEvidence.Length, _valueReads),
            RankedBy = Rows<int>.Of(hasEvidence.Length, _rankedBy),
            HasEvidence = hasEvidence,
            Reads = _reads,
            Successors = Rows<int>.Of(_nodes.NodeCount, _successors),
        };
    }

    private List<NodeRef> NodesReadByTests(Record record)
    {
        var nodes = new List<NodeRef>();
        foreach (var test in record.Tests) AddNodes(nodes, test.Reads(record.Binding, _parts.Of));
        return nodes;
    }

    private List<NodeRef> NodesReadByValue(Contribution contribution)
    {
        var nodes = new List<NodeRef>();
        if (contribution.Value is { } value) AddNodes(nodes, value.Reads(_nodes.Records[contribution.Record].Binding, _parts.Of));
        return nodes;
    }

    private void AddNodes(List<NodeRef> nodes, IEnumerable<Reading> readings)
    {
        foreach (var reading in readings)
        {
            var node = _nodes.Add(reading);
            if (!nodes.Contains(node)) nodes.Add(node);
        }
    }

    private void AddNodes(int index, Record record)
    {
        foreach (var premise in record.Premises) _nodes.Add(premise);
        for (var e = 0; e < record.Effects.Count; e++)
        {
            var effect = record.Effects[e];
            if (effect.Atom is { } atom) _nodes.Add(atom);
            if (effect.Fact is { } fact) _nodes.Add(fact);
            var value = Contribution.ValueOf(effect);
            if (value is not null || effect.Atom is Atom.Related) _nodes.Add(new Contribution(index, e, effect, value));
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

    private void AddEdges(int index, List<NodeRef> testReads)
    {
        var record = _nodes.Records[index];
        var node = _nodes.RecordNode(index);
        foreach (var premise in record.Premises)
        {
            _premises.Add((index, _nodes.Of(premise)));
            _successors.Add((_nodes.Of(premise), node));
        }

        foreach (var read in testReads) AddRead(node, _nodes.NodeOf(read));
        for (var e = 0; e < record.Effects.Count; e++)
        {
            if (record.Effects[e].Atom is not { } atom || atom is Atom.Related) continue;
            _supports.Add((_nodes.Of(atom), (index, e)));
            _successors.Add((node, _nodes.Of(atom)));
        }
    }

    private bool AddEdges(int index, Contribution contribution, List<NodeRef> testReads, List<NodeRef> valueReads)
    {
        var node = _nodes.ContributionNode(index);
        var record = _nodes.Records[contribution.Record];
        _successors.Add((_nodes.RecordNode(contribution.Record), node));
        foreach (var read in valueReads)
        {
            _valueReads.Add((index, _nodes.NodeOf(read)));
            AddRead(node, _nodes.NodeOf(read));
        }

        foreach (var read in testReads) AddRank(index, _nodes.NodeOf(read));
        foreach (var read in valueReads) AddRank(index, _nodes.NodeOf(read));
        var hasEvidence = testReads.Count + valueReads.Count > 0;
        foreach (var premise in record.Premises)
        {
            if (premise is Atom.Related) hasEvidence = true;

            // Who read a fact of a part has seen the part: its existence does not weaken what follows from that reading.
            if (premise is Atom.Related || (premise is Atom.Exists exists && !Reads(testReads, exists.Part) && !Reads(valueReads, exists.Part)))
                AddRank(index, _nodes.Of(premise));
        }

        var target = contribution.Effect switch
        {
            { Atom: Atom.Related atom } => _nodes.Of(atom),
            { Conclusion: Conclusion.Demand, Fact: { } fact } => _nodes.DemandNode(_nodes.Of(fact)),
            { Fact: { } fact } => _nodes.FactNode(_nodes.Of(fact)),
            _ => throw new InvalidOperationException($"an effect of '{record}' sets a fact but names none"),
        };
        _contributors.Add((target, index));
        _successors.Add((node, target));
        return hasEvidence;
    }

    private bool Reads(List<NodeRef> reads, Part part) =>
        reads.Exists(read => read.Sort == NodeSort.Fact && ReferenceEquals(_nodes.Facts[read.Index].Part, part));

    private void AddRank(int contribution, int source)
    {
        _rankedBy.Add((contribution, source));
        _successors.Add((source, _nodes.ContributionNode(contribution)));
    }

    private void AddRead(int reader, int read)
    {
        _reads.Add((reader, read));
        _successors.Add((read, reader));
    }
}
