using System.Runtime.InteropServices;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>
/// Numbers what a network is about. Nodes are numbered in blocks: atoms, records, contributions, the values of facts, the demands
/// on facts; node numbers are valid once everything has been added.
/// </summary>
internal sealed class NodeIndex(IReadOnlyList<Record> records)
{
    private readonly List<Atom> _atoms = new(records.Count);
    private readonly Dictionary<Atom, int> _atomIndex = new(records.Count);
    private readonly List<FactKey> _facts = new(records.Count);
    private readonly Dictionary<FactKey, int> _factIndex = new(records.Count);
    private readonly List<FactKey> _demands = [];
    private readonly Dictionary<FactKey, int> _demandIndex = [];
    private readonly List<Contribution> _contributions = new(records.Count);
    private readonly Lazy<Dictionary<Record, int>> _recordIndex = new(() => Indices(records));

    public IReadOnlyList<Atom> Atoms => _atoms;

    public IReadOnlyList<Record> Records => records;

    public IReadOnlyList<Contribution> Contributions => _contributions;

    public IReadOnlyList<FactKey> Facts => _facts;

    /// <summary>The facts that something is demanded of, or whose demands are read.</summary>
    public IReadOnlyList<FactKey> Demands => _demands;

    public int NodeCount => DemandNode(_demands.Count);

    public NodeRef Add(Atom atom)
    {
        ref var index = ref CollectionsMarshal.GetValueRefOrAddDefault(_atomIndex, atom, out var exists);
        if (!exists)
        {
            index = _atoms.Count;
            _atoms.Add(atom);
        }

        return new(NodeSort.Atom, index);
    }

    public NodeRef Add(FactKey fact) => new(NodeSort.Fact, Add(fact, _factIndex, _facts));

    public NodeRef AddDemand(FactKey fact) => new(NodeSort.Demand, Add(fact, _demandIndex, _demands));

    public void Add(Contribution contribution) => _contributions.Add(contribution);

    /// <summary>The index of an atom, which is its node too; -1 where nothing is known of it.</summary>
    public int Of(Atom atom) => _atomIndex.TryGetValue(atom, out var index) ? index : -1;

    /// <summary>The index of a fact; -1 where nothing is known of it.</summary>
    public int Of(FactKey fact) => _factIndex.TryGetValue(fact, out var index) ? index : -1;

    /// <summary>The index of the demands on a fact; -1 where there are none.</summary>
    public int OfDemand(FactKey fact) => _demandIndex.TryGetValue(fact, out var index) ? index : -1;

    /// <summary>The index of a record of this network.</summary>
    public int Of(Record record) => _recordIndex.Value[record];

    /// <summary>The node of a reading; -1 where nothing is known of it.</summary>
    public int NodeOf(Reading reading)
    {
        var found = reading switch
        {
            Reading.OfFact fact => new NodeRef(NodeSort.Fact, Of(fact.Key)),
            Reading.OfDemand demand => new(NodeSort.Demand, OfDemand(demand.Key)),
            Reading.OfRelation related => new(NodeSort.Atom, Of(new Atom.Related(related.Relation, related.A, related.B))),
            _ => new(NodeSort.Atom, Of(new Atom.Exists(((Reading.OfPart)reading).Part))),
        };
        return found.Index < 0 ? -1 : NodeOf(found);
    }

    /// <summary>The number of a node.</summary>
    public int NodeOf(NodeRef node) => node.Sort switch
    {
        NodeSort.Atom => node.Index,
        NodeSort.Record => RecordNode(node.Index),
        NodeSort.Contribution => ContributionNode(node.Index),
        NodeSort.Fact => FactNode(node.Index),
        _ => DemandNode(node.Index),
    };

    public int RecordNode(int record) => _atoms.Count + record;

    public int ContributionNode(int contribution) => RecordNode(records.Count) + contribution;

    public int FactNode(int fact) => ContributionNode(_contributions.Count) + fact;

    public int DemandNode(int demand) => FactNode(_facts.Count) + demand;

    /// <summary>The block a node is in, and its index there.</summary>
    public NodeRef Locate(int node)
    {
        if (node < RecordNode(0)) return new(NodeSort.Atom, node);
        if (node < ContributionNode(0)) return new(NodeSort.Record, node - RecordNode(0));
        if (node < FactNode(0)) return new(NodeSort.Contribution, node - ContributionNode(0));
        return node < DemandNode(0) ? new(NodeSort.Fact, node - FactNode(0)) : new(NodeSort.Demand, node - DemandNode(0));
    }

    private static int Add(FactKey fact, Dictionary<FactKey, int> indices, List<FactKey> facts)
    {
        ref var index = ref CollectionsMarshal.GetValueRefOrAddDefault(indices, fact, out var exists);
        if (!exists)
        {
            index = facts.Count;
            facts.Add(fact);
        }

        return index;
    }

    private static Dictionary<Record, int> Indices(IReadOnlyList<Record> records)
    {
        var indices = new Dictionary<Record, int>(records.Count);
        for (var r = 0; r < records.Count; r++) indices.Add(records[r], r);
        return indices;
    }
}
