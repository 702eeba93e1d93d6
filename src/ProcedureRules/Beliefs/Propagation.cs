using System.Numerics;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>
/// Brings labels up to date after some inputs changed: stratum by stratum, each at most once, and only where something that feeds it
/// has changed. A ring is taken back to the bottom and raised from what stands outside it, so that it falls and weakens with its root.
/// </summary>
internal sealed class Propagation(Graph graph, Strata strata, Labels labels, IBeliefs beliefs, Labels? before)
{
    private readonly Labeller _labeller = new(graph, labels, beliefs);
    private readonly ulong[] _dirty = new ulong[(strata.Count + 63) / 64];
    private bool[]? _queued;

    /// <summary>A node has to be looked at.</summary>
    public void Touch(int node)
    {
        var stratum = strata.Of(node);
        _dirty[stratum >> 6] |= 1UL << stratum;
    }

    /// <summary>Every node has to be looked at.</summary>
    public void TouchAll()
    {
        for (var stratum = 0; stratum < strata.Count; stratum++) _dirty[stratum >> 6] |= 1UL << stratum;
    }

    /// <summary>Labels what was touched and what follows from it.</summary>
    public void Run()
    {
        for (var word = 0; word < _dirty.Length; word++)
        {
            while (_dirty[word] != 0)
            {
                var bit = BitOperations.TrailingZeroCount(_dirty[word]);
                _dirty[word] &= ~(1UL << bit);
                var nodes = strata[(word << 6) | bit];
                if (nodes.Length > 1) SettleRing(nodes);
                else if (_labeller.Label(nodes[0])) TouchSuccessors(nodes[0]);
            }
        }
    }

    private void TouchSuccessors(int node)
    {
        foreach (var successor in graph.Successors[node])
            if (strata.Of(successor) != strata.Of(node)) Touch(successor);
    }

    // Levels first: they only rise. A rank depends on whether its relation turns out yes, unknown or no, so ranks rise only once levels stand.
    private void SettleRing(ReadOnlySpan<int> ring)
    {
        foreach (var node in ring) _labeller.Clear(node);
        Raise(ring, withRanks: false);
        Raise(ring, withRanks: true);
        foreach (var node in ring)
            if (before is null || !_labeller.IsSame(node, before)) TouchSuccessors(node);
    }

    private void Raise(ReadOnlySpan<int> ring, bool withRanks)
    {
        _queued ??= new bool[graph.Nodes.NodeCount];
        var queue = new Queue<int>(ring.Length);
        foreach (var node in ring) Enqueue(node);
        while (queue.TryDequeue(out var node))
        {
            _queued[node] = false;
            if (!_labeller.Label(node, withRanks)) continue;
            foreach (var successor in graph.Successors[node])
                if (strata.Of(successor) == strata.Of(node)) Enqueue(successor);
        }

        void Enqueue(int node)
        {
            if (_queued[node]) return;
            _queued[node] = true;
            queue.Enqueue(node);
        }
    }
}
