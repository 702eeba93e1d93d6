using System.Collections;
using System.Runtime.CompilerServices;

namespace ProcedureRules.Language.Syntax;

/// <summary>A list of nodes that is equal to another of equal nodes, as the nodes that hold it need.</summary>
[CollectionBuilder(typeof(NodeList), nameof(NodeList.Create))]
internal sealed class NodeList<T>(T[] items) : IReadOnlyList<T>, IEquatable<NodeList<T>>
    where T : SyntaxNode
{
    private readonly T[] _items = items;

    public int Count => _items.Length;

    public T this[int index] => _items[index];

    public bool Equals(NodeList<T>? other) => other is not null && _items.AsSpan().SequenceEqual(other._items);

    public override bool Equals(object? obj) => Equals(obj as NodeList<T>);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in _items) hash.Add(item);
        return hash.ToHashCode();
    }

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes lists of nodes from collection expressions.</summary>
internal static class NodeList
{
    public static NodeList<T> Create<T>(ReadOnlySpan<T> items)
        where T : SyntaxNode => new(items.ToArray());
}
