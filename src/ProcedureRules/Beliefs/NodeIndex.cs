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
    private readonly List<Atom> _atoms = [];
    private readonly Dictionary<Atom, int> _atomIndex = [];
    private readonly List<FactKey> _facts = [];
    private readonly Dictionary<FactKey, int> _factIndex = [];
    private readonly List<Contribution> _contributions = [];
    private readonly Dictionary<Record, int> _recordIndex = Indices(records);

    public IReadOnlyList<Atom> Atoms => _atoms;

    public IReadOnlyList<Record> Records => records;

    public IReadOnlyList<Contribution> Contributions => _contributions;

    public IReadOnlyList<FactKey> Facts => _facts;

    public int NodeCount => FactNode(2 * _facts.Count);

    public void Add(Atom atom)
    {
        if (_atomIndex.TryAdd(atom, _atoms.Count)) _atoms.Add(atom);
    }

    public void Add(FactKey fact)
    {
        if (_factIndex.TryAdd(fact, _facts.Count)) _facts.Add(fact);
    }

    public void Add(Contribution contribution) => _contributions.Add(contribution);

    public void Add(Reading reading)
    {
        switch (reading)
        {
            case Reading.OfFact fact: Add(fact.Key); break;
            case Reading.OfDemand demand: Add(demand.Key); break;
            case Reading.OfRelation related: Add(new Atom.Related(related.Relation, related.A, related.B)); break;
            case Reading.OfPart part: Add(new Atom.Exists(part.Part)); break;
        }
    }

    /// <summary>The index of an atom, which is its node too; -1 where nothing is known of it.</summary>
    public int Of(Atom atom) => _atomIndex.TryGetValue(atom, out var index) ? index : -1;

    /// <summary>The index of a fact; -1 where nothing is known of it.</summary>
    public int Of(FactKey fact) => _factIndex.TryGetValue(fact, out var index) ? index : -1;

    /// <summary>The index of a record of this network.</summary>
    public int Of(Record record) => _recordIndex[record];

    /// <summary>The node of a reading; -1 where nothing is known of it.</summary>
    public int NodeOf(Reading reading)
    {
        switch (reading)
        {
            case Reading.OfFact fact:
                var value = Of(fact.Key);
                return value < 0 ? -1 : FactNode(value);
            case Reading.OfDemand demand:
                var demanded = Of(demand.Key);
                return demanded < 0 ? -1 : DemandNode(demanded);
            case Reading.OfRelation related:
                return Of(new Atom.Related(related.Relation, related.A, related.B));
            default:
                return Of(new Atom.Exists(((Reading.OfPart)reading).Part));
        }
    }

    public int RecordNode(int record) => _atoms.Count + record;

    public int ContributionNode(int contribution) => RecordNode(records.Count) + contribution;

    public int FactNode(int fact) => ContributionNode(_contributions.Count) + fact;

    public int DemandNode(int fact) => FactNode(_facts.Count) + fact;

    /// <summary>The block a node is in, and its index there.</summary>
    public (NodeSort Sort, int Index) Locate(int node)
    {
        if (node < RecordNode(0)) return (NodeSort.Atom, node);
        if (node < ContributionNode(0)) return (NodeSort.Record, node - RecordNode(0));
        if (node < FactNode(0)) return (NodeSort.Contribution, node - ContributionNode(0));
        return node < DemandNode(0) ? (NodeSort.Fact, node - FactNode(0)) : (NodeSort.Demand, node - DemandNode(0));
    }

    private static Dictionary<Record, int> Indices(IReadOnlyList<Record> records)
    {
        var indices = new Dictionary<Record, int>(records.Count);
        for (var r = 0; r < records.Count; r++) indices.Add(records[r], r);
        return indices;
    }
}
