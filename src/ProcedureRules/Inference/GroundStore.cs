using System.Runtime.CompilerServices;

namespace ProcedureRules.Inference;

/// <summary>The ground facts that hold, by hash on whatever the joins of the rules look them up by.</summary>
internal sealed class GroundStore(RuleIndex index)
{
    private static readonly List<Ground> None = [];

    private readonly Dictionary<Key, Ground> _exact = [];
    private readonly Dictionary<Key, List<Ground>> _byFirst = [];
    private readonly Dictionary<Key, List<Ground>> _bySecond = [];
    private readonly List<Ground>[] _all = new List<Ground>[index.PredicateCount];

    public Ground? Exactly(int predicate, object? first, object? second) => _exact.GetValueOrDefault(new(predicate, first, second));

    public List<Ground> ByFirst(int predicate, object? first) => _byFirst.GetValueOrDefault(new(predicate, first, null), None);

    public List<Ground> BySecond(int predicate, object? second) => _bySecond.GetValueOrDefault(new(predicate, null, second), None);

    public List<Ground> All(int predicate) => _all[predicate] ?? None;

    public void Add(Ground ground)
    {
        var needed = index.Indexes[ground.Predicate];
        if (needed.HasFlag(GroundIndexes.Exact)) _exact.Add(new(ground.Predicate, ground.First, ground.Second), ground);
        if (needed.HasFlag(GroundIndexes.ByFirst)) Bucket(_byFirst, new(ground.Predicate, ground.First, null)).Add(ground);
        if (needed.HasFlag(GroundIndexes.BySecond)) Bucket(_bySecond, new(ground.Predicate, null, ground.Second)).Add(ground);
        if (needed.HasFlag(GroundIndexes.All)) (_all[ground.Predicate] ??= []).Add(ground);
    }

    public void Remove(Ground ground)
    {
        var needed = index.Indexes[ground.Predicate];
        if (needed.HasFlag(GroundIndexes.Exact)) _exact.Remove(new(ground.Predicate, ground.First, ground.Second));
        if (needed.HasFlag(GroundIndexes.ByFirst)) Drop(_byFirst, new(ground.Predicate, ground.First, null), ground);
        if (needed.HasFlag(GroundIndexes.BySecond)) Drop(_bySecond, new(ground.Predicate, null, ground.Second), ground);
        if (needed.HasFlag(GroundIndexes.All)) _all[ground.Predicate].Remove(ground);
    }

    private static List<Ground> Bucket(Dictionary<Key, List<Ground>> buckets, Key key)
    {
        if (!buckets.TryGetValue(key, out var bucket)) buckets.Add(key, bucket = []);
        return bucket;
    }

    private static void Drop(Dictionary<Key, List<Ground>> buckets, Key key, Ground ground)
    {
        var bucket = buckets[key];
        bucket.Remove(ground);
        if (bucket.Count == 0) buckets.Remove(key);
    }

    // Parts and steps have one object each in a session, so identity is enough, and cheap.
    private readonly struct Key(int predicate, object? first, object? second) : IEquatable<Key>
    {
        private readonly int _predicate = predicate;
        private readonly object? _first = first;
        private readonly object? _second = second;

        public bool Equals(Key other) =>
            _predicate == other._predicate && ReferenceEquals(_first, other._first) && ReferenceEquals(_second, other._second);

        public override bool Equals(object? obj) => obj is Key other && Equals(other);

        public override int GetHashCode() => HashCode.Combine(
            _predicate, RuntimeHelpers.GetHashCode(_first), RuntimeHelpers.GetHashCode(_second));
    }
}
