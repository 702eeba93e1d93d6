namespace ProcedureRules.Beliefs;

/// <summary>
/// The strongly connected components of a graph in topological order: what a node rests on is in an earlier stratum or, in a ring, its own
/// (R. Tarjan, Depth-first search and linear graph algorithms, 1972; here without recursion).
/// </summary>
internal sealed class Strata
{
    private readonly int[] _start;
    private readonly int[] _nodes;
    private readonly int[] _stratumOf;

    private Strata(int[] start, int[] nodes, int[] stratumOf)
    {
        _start = start;
        _nodes = nodes;
        _stratumOf = stratumOf;
    }

    /// <summary>How many strata there are.</summary>
    public int Count => _start.Length - 1;

    /// <summary>The nodes of a stratum; more than one are a ring.</summary>
    public ReadOnlySpan<int> this[int stratum] => _nodes.AsSpan(_start[stratum], _start[stratum + 1] - _start[stratum]);

    /// <summary>The stratum of a node.</summary>
    public int Of(int node) => _stratumOf[node];

    /// <summary>Sorts the nodes of a graph into strata.</summary>
    public static Strata Of(int nodeCount, Rows<int> successors)
    {
        var number = new int[nodeCount];
        var low = new int[nodeCount];
        var component = new int[nodeCount];
        Array.Fill(component, -1);
        var open = new Stack<int>();
        var path = new Stack<(int Node, int Next)>();
        var (numbers, components) = (0, 0);
        for (var root = 0; root < nodeCount; root++)
        {
            if (number[root] != 0) continue;
            Enter(root);
            while (path.TryPop(out var frame))
            {
                var (node, next) = frame;
                var targets = successors[node];
                while (next < targets.Length && number[targets[next]] != 0)
                {
                    if (component[targets[next]] < 0) low[node] = Math.Min(low[node], number[targets[next]]);
                    next++;
                }

                if (next < targets.Length)
                {
                    path.Push((node, next + 1));
                    Enter(targets[next]);
                    continue;
                }

                if (low[node] == number[node]) Close(node);
                if (path.TryPeek(out var parent) && component[node] < 0) low[parent.Node] = Math.Min(low[parent.Node], low[node]);
            }
        }

        return Sorted(component, components);

        void Enter(int node)
        {
            number[node] = low[node] = ++numbers;
            open.Push(node);
            path.Push((node, 0));
        }

        void Close(int root)
        {
            int node;
            do
            {
                node = open.Pop();
                component[node] = components;
            }
            while (node != root);
            components++;
        }
    }

    // Components close in reverse: what a component leads to has been closed before it.
    private static Strata Sorted(int[] component, int count)
    {
        var start = new int[count + 1];
        for (var node = 0; node < component.Length; node++)
        {
            component[node] = count - 1 - component[node];
            start[component[node] + 1]++;
        }

        for (var stratum = 0; stratum < count; stratum++) start[stratum + 1] += start[stratum];
        var next = start.AsSpan(0, count).ToArray();
        var nodes = new int[component.Length];
        for (var node = 0; node < component.Length; node++) nodes[next[component[node]]++] = node;
        return new(start, nodes, component);
    }
}
