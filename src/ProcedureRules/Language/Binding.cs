using ProcedureRules.Facts;

namespace ProcedureRules.Language;

/// <summary>The parts and steps that the variables of a rule stand for in one instance.</summary>
public sealed class Binding(object[] items) : IEquatable<Binding>
{
    private readonly object[] _items = items;

    // The parts that aggregates are at, the outermost first; theirs are the slots -1, -2 and so on.
    private readonly Part[] _each = [];

    private Binding(object[] items, Part[] each)
        : this(items) => _each = each;

    /// <summary>The item in a slot, a <see cref="Facts.Part"/> or a <see cref="Language.Step"/>.</summary>
    public object this[int slot] => _items[slot];

    /// <summary>How many slots there are.</summary>
    public int Count => _items.Length;

    /// <summary>The part in a slot.</summary>
    public Part Part(int slot) => slot >= 0 ? (Part)_items[slot] : _each[~slot];

    /// <summary>The step in a slot.</summary>
    public Step Step(int slot) => (Step)_items[slot];

    /// <summary>The same, inside an aggregate that has come to a part.</summary>
    internal Binding Each(Part part) => new(_items, [.. _each, part]);

    /// <inheritdoc/>
    public bool Equals(Binding? other) => other is not null && _items.AsSpan().SequenceEqual(other._items) && _each.AsSpan().SequenceEqual(other._each);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Binding);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in _items) hash.Add(item);
        return hash.ToHashCode();
    }
}
