using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>The states on arrival, and who has to be looked at again when one changes.</summary>
internal sealed class StatesNow
{
    private readonly Dictionary<StateVariable, int> _states = [];
    private readonly Dictionary<StateVariable, HashSet<RuleInstance>> _instances = [];
    private readonly Dictionary<StateVariable, HashSet<Node>> _nodes = [];
    private readonly Dictionary<Part, HashSet<Aspect>> _changed = [];

    public int this[Part part, Aspect aspect] => _states.TryGetValue(new StateVariable(part, aspect), out var state) ? state : aspect.Normal;

    /// <summary>The aspects of a part that are not in their normal state.</summary>
    public IEnumerable<Aspect> ChangedAspectsOf(Part part) => _changed.TryGetValue(part, out var aspects) ? aspects : [];

    public void Set(Part part, Aspect aspect, int state)
    {
        _states[new StateVariable(part, aspect)] = state;
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

    public void Unwatch(Part part, Aspect aspect, RuleInstance instance) => _instances.GetValueOrDefault(new StateVariable(part, aspect))?.Remove(instance);

    public void Unwatch(Part part, Aspect aspect, Node node) => _nodes.GetValueOrDefault(new StateVariable(part, aspect))?.Remove(node);

    public IReadOnlyCollection<RuleInstance> InstancesOn(Part part, Aspect aspect) => _instances.TryGetValue(new StateVariable(part, aspect), out var all) ? all : [];

    public IReadOnlyCollection<Node> NodesOn(Part part, Aspect aspect) => _nodes.TryGetValue(new StateVariable(part, aspect), out var all) ? all : [];

    private static HashSet<T> Watchers<T>(Dictionary<StateVariable, HashSet<T>> watchers, Part part, Aspect aspect)
    {
        var variable = new StateVariable(part, aspect);
        if (!watchers.TryGetValue(variable, out var all)) watchers.Add(variable, all = []);
        return all;
    }
}
