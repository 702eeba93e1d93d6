namespace ProcedureRules.Inference;

/// <summary>The instances that have fired and still stand, in the order of their records; what did not change is not sorted again.</summary>
internal sealed class FiredInstances(RecordOrder order)
{
    private readonly List<Instance> _fresh = [];
    private List<Instance> _sorted = [];

    /// <summary>An instance has fired.</summary>
    public void Add(Instance instance)
    {
        if (instance.IsListed) return;
        instance.IsListed = true;
        _fresh.Add(instance);
    }

    /// <summary>The records, once nothing is under way.</summary>
    public Record[] Records()
    {
        DropFallen(_sorted);
        DropFallen(_fresh);
        _fresh.Sort((a, b) => order.Compare(a.Record, b.Record));
        Merge();
        var records = new Record[_sorted.Count];
        for (var i = 0; i < records.Length; i++) records[i] = _sorted[i].Record!;
        return records;
    }

    private static void DropFallen(List<Instance> instances) => instances.RemoveAll(static instance =>
    {
        if (!instance.IsShown) instance.IsListed = false;
        return !instance.IsShown;
    });

    private void Merge()
    {
        var merged = new List<Instance>(_sorted.Count + _fresh.Count);
        var next = 0;
        foreach (var instance in _sorted)
        {
            while (next < _fresh.Count && order.Compare(_fresh[next].Record, instance.Record) < 0) merged.Add(_fresh[next++]);
            merged.Add(instance);
        }
        merged.AddRange(_fresh.Skip(next));
        _sorted = merged;
        _fresh.Clear();
    }
}
