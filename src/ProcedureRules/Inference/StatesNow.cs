using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>The states on arrival, and who has to be looked at again when one changes.</summary>
internal sealed class StatesNow
{
    private readonly Dictionary<(Part, Aspect), int> _states = [];
    private readonly Dictionary<(Part, Aspect), HashSet<RuleInstance>> _instances = [];
    private readonly Dictionary<(Part, Aspect), HashSet<Node>> _nodes = [];
    private readonly Dictionary<Part, HashSet<Aspect>> _changed = [];

    public int this[Part part, Aspect aspect] => _states.TryGetValue((part, aspect), out var state) ? state : aspect.Normal;

    /// <summary>The aspects of a part that are not in their normal state.</summary>
    public IEnumerable<Aspect> ChangedAspectsOf(Part part) => _changed.TryGetValue(part, out var aspects) ? aspects : [];

    public void Set(Part part, Aspect aspect, int state)
    {
        _states[(part, aspect)] = state;
        var isNormal = state == aspect.Normal;
        if (!_changed.TryGetValue(part, out var aspects))
        {
            if (isNormal) return;
            _changed.Add(part, aspects = []);
        }
        if (isNormal) aspects.Remove(aspect);
        else aspects.Add(aspect);
    }

    public void Watch(Part part, Aspect aspect, RuleInstance instance) => Watchers(_instances, part, aspect).Add(instance);

    public void Watch(Part part, Aspect aspect, Node node) => Watchers(_nodes, part, aspect).Add(node);

    public void Unwatch(Part part, Aspect aspect, RuleInstance instance) => _instances.GetValueOrDefault((part, aspect))?.Remove(instance);

    public void Unwatch(Part part, Aspect aspect, Node node) => _nodes.GetValueOrDefault((part, aspect))?.Remove(node);

    public IReadOnlyCollection<RuleInstance> InstancesOn(Part part, Aspect aspect) => _instances.TryGetValue((part, aspect), out var all) ? all : [];

    public IReadOnlyCollection<Node> NodesOn(Part part, Aspect aspect) => _nodes.TryGetValue((part, aspect), out var all) ? all : [];

    private static HashSet<T> Watchers<T>(Dictionary<(Part, Aspect), HashSet<T>> watchers, Part part, Aspect aspect)
    {
        if (!watchers.TryGetValue((part, aspect), out var all)) watchers.Add((part, aspect), all = []);
        return all;
    }
}
