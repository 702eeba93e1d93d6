using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Everything of a network that some of its records lead to, in however many turns, whether or not it does now.</summary>
internal sealed class Consequences : IConsequences
{
    private readonly NodeIndex _nodes;
    private readonly ulong[] _reached;

    public Consequences(BeliefNetwork network, IEnumerable<int> records)
    {
        _nodes = network.Graph.Nodes;
        _reached = new Reach(network).From(records.Select(_nodes.RecordNode));
    }

    /// <inheritdoc/>
    public bool Has(int record) => Reach.Has(_reached, _nodes.RecordNode(record));

    /// <inheritdoc/>
    public bool Has(Atom atom) => _nodes.Of(atom) is >= 0 and var node && Reach.Has(_reached, node);

    /// <inheritdoc/>
    public bool Has(FactKey fact) => Has(NodeSort.Fact, _nodes.Of(fact)) || Has(NodeSort.Demand, _nodes.OfDemand(fact));

    /// <inheritdoc/>
    public bool Has(string cause, IReadOnlyList<int> findings) => findings.Any(Has);

    private bool Has(NodeSort sort, int index) => index >= 0 && Reach.Has(_reached, _nodes.NodeOf(new NodeRef(sort, index)));
}
