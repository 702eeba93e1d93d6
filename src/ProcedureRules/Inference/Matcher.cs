using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>
/// Keeps the instances of all rules and mechanisms in step with the atoms that hold: hash indexes from each new ground fact to the conditions
/// that read it, and from each that goes to the instances that used it.
/// </summary>
internal sealed class Matcher
{
    private readonly StatesNow _states = new();
    private readonly Dictionary<Part, Node> _parts = [];
    private readonly GroundJoins _joins;
    private readonly Mechanisms _mechanisms;
    private readonly RecordMaker _records;
    private readonly Workload _workload;
    private InstanceChanges _changes = new();

    public Matcher(RuleIndex index, RecordMaker records, Workload workload)
    {
        _records = records;
        _workload = workload;
        _joins = new GroundJoins(index, workload, Matched);
        _mechanisms = new Mechanisms(index, _states, records);
    }

    /// <summary>Atoms have come to hold.</summary>
    public InstanceChanges Add(IEnumerable<Node> nodes)
    {
        _changes = new InstanceChanges();
        foreach (var node in nodes)
        {
            if (node.Atom is Atom.Arrived(var part, var aspect, var state)) ChangeState(part, aspect, state);
            else Add(node);
        }
        return _changes;
    }

    /// <summary>Atoms hold no more.</summary>
    public InstanceChanges Remove(IEnumerable<Node> nodes)
    {
        _changes = new InstanceChanges();
        foreach (var node in nodes)
        {
            if (node.Atom is not Atom.Arrived(var part, var aspect, var state)) Remove(node);
            // Where another state was stated in the same breath, that one counts.
            else if (_states[part, aspect] == state) ChangeState(part, aspect, aspect.Normal);
        }
        return _changes;
    }

    private void Add(Node node)
    {
        if (node.Atom is Atom.Exists(var part)) _parts.Add(part, node);
        _joins.Add(node);
        foreach (var (on, aspect) in Mechanisms.StatesBehind(node)) _states.Watch(on, aspect, node);
        foreach (var record in _mechanisms.From(node)) Show(node, record);
    }

    private void Remove(Node node)
    {
        if (node.Atom is Atom.Exists(var part)) _parts.Remove(part);
        _joins.Remove(node, KillUsers);
        foreach (var instance in node.Mechanisms) Hide(instance);
        node.Mechanisms.Clear();
        foreach (var (on, aspect) in Mechanisms.StatesBehind(node)) _states.Unwatch(on, aspect, node);
    }

    private void Matched(RuleInstance instance)
    {
        foreach (var ground in instance.Grounds) ground.Users.Add(instance);
        foreach (var condition in instance.Plan.Rule.AtStart)
            _states.Watch(instance.Binding.Part(condition.Slot), condition.Aspect, instance);
        if (IsAllowed(instance)) Show(instance);
    }

    private void KillUsers(Ground leaving)
    {
        foreach (var user in leaving.Users)
            if (user.IsAlive) Kill(user, leaving);
    }

    private void Kill(RuleInstance instance, Ground leaving)
    {
        instance.IsAlive = false;
        Hide(instance);
        foreach (var ground in instance.Grounds)
            if (!ReferenceEquals(ground, leaving)) ground.UserIsGone();
        foreach (var condition in instance.Plan.Rule.AtStart)
            _states.Unwatch(instance.Binding.Part(condition.Slot), condition.Aspect, instance);
    }

    private bool IsAllowed(RuleInstance instance)
    {
        foreach (var condition in instance.Plan.Rule.AtStart)
            if (!condition.States.Has(_states[instance.Binding.Part(condition.Slot), condition.Aspect])) return false;
        return true;
    }

    private void ChangeState(Part part, Aspect aspect, int state)
    {
        _states.Set(part, aspect, state);
        foreach (var instance in _states.InstancesOn(part, aspect))
        {
            if (IsAllowed(instance) == instance.IsShown) continue;
            if (instance.IsShown) Hide(instance);
            else Show(instance);
        }
        foreach (var node in _states.NodesOn(part, aspect)) Reconsider(node);
        if (_parts.TryGetValue(part, out var existing)) Reconsider(existing);
    }

    /// <summary>What follows from an atom may have changed; what has not is left alone, so that nothing behind it stirs.</summary>
    private void Reconsider(Node node)
    {
        var records = _mechanisms.From(node).ToList();
        var kept = node.Mechanisms.FindAll(instance => records.Exists(record => IsSame(record, instance.Record!)));
        foreach (var instance in node.Mechanisms)
            if (!kept.Contains(instance)) Hide(instance);
        node.Mechanisms.Clear();
        node.Mechanisms.AddRange(kept);
        foreach (var record in records)
            if (!kept.Exists(instance => IsSame(record, instance.Record!))) Show(node, record);
    }

    private static bool IsSame(Record a, Record b) => a.Mechanism == b.Mechanism
        && a.Effects[0].Atom == b.Effects[0].Atom && a.Premises.SequenceEqual(b.Premises);

    private void Show(Node origin, Record record)
    {
        var instance = new MechanismInstance(origin, record, _records.Concluded(record));
        origin.Mechanisms.Add(instance);
        Show(instance);
    }

    private void Show(Instance instance)
    {
        instance.IsShown = true;
        _workload.Count(instance, 1);
        _changes.Appeared(instance);
    }

    private void Hide(Instance instance)
    {
        if (!instance.IsShown) return;
        instance.IsShown = false;
        _workload.Count(instance, -1);
        _changes.Vanished(instance);
    }
}
