namespace ProcedureRules.Inference;

/// <summary>The ground facts of the atoms that hold; each is joined with those before it as it comes.</summary>
internal sealed class GroundJoins
{
    private readonly GroundMaker _grounds;
    private readonly GroundStore _store;
    private readonly Joiner _joiner;

    public GroundJoins(RuleIndex index, Workload workload, Action<RuleInstance> found)
    {
        _grounds = new GroundMaker(index);
        _store = new GroundStore(index);
        _joiner = new Joiner(index, _store, found) { Breathe = workload.Breathe };
    }

    /// <summary>An atom has come to hold.</summary>
    public void Add(Node node)
    {
        foreach (var ground in _grounds.From(node))
        {
            node.Grounds.Add(ground);
            OtherNode(ground, node)?.Grounds.Add(ground);
            _store.Add(ground);
            _joiner.JoinThrough(ground);
        }
    }

    /// <summary>An atom holds no more.</summary>
    /// <param name="node">The atom.</param>
    /// <param name="leaving">Told of each of its ground facts.</param>
    public void Remove(Node node, Action<Ground> leaving)
    {
        foreach (var ground in node.Grounds)
        {
            _store.Remove(ground);
            leaving(ground);
            OtherNode(ground, node)?.Grounds.Remove(ground);
        }
        node.Grounds.Clear();
        _grounds.Forget(node);
    }

    private static Node? OtherNode(Ground ground, Node node) => ReferenceEquals(ground.Source, node) ? ground.Beside : ground.Source;
}
