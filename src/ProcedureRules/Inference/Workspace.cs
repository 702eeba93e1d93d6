using NRules.RuleModel;

namespace ProcedureRules.Inference;

/// <summary>
/// What one session knows, as a fact of its own: through it the rules and aggregators of the one compiled network, which all sessions
/// share, reach the data of theirs.
/// </summary>
internal sealed class Workspace
{
    private readonly RecordMaker _records;

    public Workspace(RuleIndex index)
    {
        _records = new RecordMaker(Nodes);
        Fired = new FiredInstances(new RecordOrder(index));
        Workload = new Workload(index);
        Matcher = new Matcher(index, _records, Workload);
    }

    public NodeTable Nodes { get; } = new();
    public Workload Workload { get; }
    public Matcher Matcher { get; }
    public FiredInstances Fired { get; }

    /// <summary>Whether an atom lost a support and kept another: only then can a ring be left that holds itself up.</summary>
    public bool HasWeakened { get; set; }

    /// <summary>Called by the rule engine when an instance fires: what it concludes becomes linked facts.</summary>
    public void Conclude(IContext context, Instance instance)
    {
        if (instance is RuleInstance matched)
        {
            instance.Record = _records.OfRule(matched);
            instance.Concluded = _records.Concluded(instance.Record);
        }
        Fired.Add(instance);
        if (instance.Concluded.Count > 0) context.InsertAllLinked(Supports(instance.Concluded));
    }

    private static KeyValuePair<object, object>[] Supports(IReadOnlyList<Node> nodes)
    {
        var supports = new KeyValuePair<object, object>[nodes.Count];
        for (var i = 0; i < supports.Length; i++) supports[i] = new(i, new Support(nodes[i]));
        return supports;
    }
}
