using System.Collections.Concurrent;
using ProcedureRules.Inference;

namespace ProcedureRules.Beliefs;

/// <summary>
/// Which nodes the inputs of a network reach: what lies outside the reach of everything that is still open has the label it will have in the
/// end, sure or not. Safe on many threads.
/// </summary>
internal sealed class Reach(BeliefNetwork network)
{
    private readonly ConcurrentDictionary<ChoiceKey, ulong[]> _ofChoice = [];

    /// <summary>The nodes that a choice reaches.</summary>
    public ulong[] Of(ChoiceKey choice) => _ofChoice.GetOrAdd(choice, key => From(network.OptionsOf(key)));

    /// <summary>The nodes that some nodes reach, themselves among them.</summary>
    public ulong[] From(IEnumerable<int> nodes)
    {
        var reached = new ulong[(network.Graph.Nodes.NodeCount + 63) / 64];
        var queue = new Queue<int>();
        foreach (var node in nodes) Enter(node);
        while (queue.TryDequeue(out var node))
            foreach (var successor in network.Graph.Successors[node]) Enter(successor);
        return reached;

        void Enter(int node)
        {
            if (Has(reached, node)) return;
            reached[node >> 6] |= 1UL << node;
            queue.Enqueue(node);
        }
    }

    /// <summary>Whether a node is among those reached.</summary>
    public static bool Has(ulong[] reached, int node) => (reached[node >> 6] >> node & 1) != 0;
}
