namespace ProcedureRules.Inference;

/// <summary>Atoms interned: one node for each, found by content.</summary>
internal sealed class NodeTable
{
    private readonly Dictionary<Atom, Node> _nodes = [];
    private readonly List<Node> _fallen = [];

    public IEnumerable<Node> All => _nodes.Values;

    public Node Intern(Atom atom)
    {
        if (!_nodes.TryGetValue(atom, out var node)) _nodes.Add(atom, node = new Node(atom));
        return node;
    }

    public void HasFallen(Node node) => _fallen.Add(node);

    /// <summary>
    /// Forgets atoms that nothing supports any more. Only while nothing is under way: until then an instance that has not yet concluded may
    /// hold the node, and a second node for its atom would split the supports.
    /// </summary>
    public void Purge()
    {
        foreach (var node in _fallen)
            if (node.Supports == 0) _nodes.Remove(node.Atom);
        _fallen.Clear();
    }
}
