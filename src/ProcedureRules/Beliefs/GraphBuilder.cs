using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

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
        var testReads = _nodes.Records
            .Select(record => record.Tests.SelectMany(test => test.Reads(record.Binding, _parts.Of)).Distinct().ToList())
            .ToList();
        foreach (var reads in testReads) AddNodes(reads);
        for (var r = 0; r < _nodes.Records.Count; r++) AddNodes(r, _nodes.Records[r]);
        var valueReads = _nodes.Contributions
            .Select(c => c.Value?.Reads(_nodes.Records[c.Record].Binding, _parts.Of).Distinct().ToList() ?? [])
            .ToList();
        foreach (var reads in valueReads) AddNodes(reads);
        AddStatedNodes();

        for (var r = 0; r < _nodes.Records.Count; r++) AddEdges(r, testReads[r]);
        var hasEvidence = new bool[_nodes.Contributions.Count];
        for (var c = 0; c < hasEvidence.Length; c++)
            hasEvidence[c] = AddEdges(c, _nodes.Contributions[c], [.. testReads[_nodes.Contributions[c].Record].Union(valueReads[c])], valueReads[c]);

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
            Successors = Rows<int>.Of(_nodes.NodeCount, [.. _successors.Distinct()]),
        };
    }

    private void AddNodes(IEnumerable<Reading> readings)
    {
        foreach (var reading in readings) _nodes.Add(reading);
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
        var vocabulary = _situation.Vocabulary;
        var factsOf = new Dictionary<Kind, List<FactDefinition>>();
        foreach (var part in _situation.Parts)
        {
            _nodes.Add(new Atom.Exists(part));
            if (!factsOf.TryGetValue(part.Kind, out var facts))
                factsOf[part.Kind] = facts = [.. vocabulary.Facts.Where(fact => ReferenceEquals(vocabulary.FactOf(part.Kind, fact.Name), fact))];
            foreach (var fact in facts) _nodes.Add(new FactKey(part, fact));
        }
    }

    private void AddEdges(int index, IReadOnlyList<Reading> testReads)
    {
        var record = _nodes.Records[index];
        var node = _nodes.RecordNode(index);
        foreach (var premise in record.Premises.Distinct())
        {
            _premises.Add((index, _nodes.Of(premise)));
            _successors.Add((_nodes.Of(premise), node));
        }

        foreach (var reading in testReads) AddRead(node, _nodes.NodeOf(reading));
        for (var e = 0; e < record.Effects.Count; e++)
        {
            if (record.Effects[e].Atom is not { } atom || atom is Atom.Related) continue;
            _supports.Add((_nodes.Of(atom), (index, e)));
            _successors.Add((node, _nodes.Of(atom)));
        }
    }

    private bool AddEdges(int index, Contribution contribution, List<Reading> reads, List<Reading> valueReads)
    {
        var node = _nodes.ContributionNode(index);
        var record = _nodes.Records[contribution.Record];
        _successors.Add((_nodes.RecordNode(contribution.Record), node));
        foreach (var reading in valueReads)
        {
            _valueReads.Add((index, _nodes.NodeOf(reading)));
            AddRead(node, _nodes.NodeOf(reading));
        }

        // Who read a fact of a part has seen the part: its existence does not weaken what follows from that reading.
        var seen = reads.OfType<Reading.OfFact>().Select(reading => reading.Key.Part).ToHashSet();
        var premises = record.Premises.Where(premise => premise is Atom.Related || (premise is Atom.Exists exists && !seen.Contains(exists.Part)));
        foreach (var source in reads.Select(_nodes.NodeOf).Concat(premises.Select(_nodes.Of)).Distinct())
        {
            _rankedBy.Add((index, source));
            _successors.Add((source, node));
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
        return reads.Count > 0 || record.Premises.Any(premise => premise is Atom.Related);
    }

    private void AddRead(int reader, int read)
    {
        _reads.Add((reader, read));
        _successors.Add((read, reader));
    }
}
