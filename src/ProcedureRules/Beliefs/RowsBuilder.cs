using System.Runtime.InteropServices;

namespace ProcedureRules.Beliefs;

/// <summary>Collects <see cref="Rows{T}"/> that come one after another.</summary>
internal sealed class RowsBuilder<T>(int rows, int items)
{
    private readonly List<int> _start = new(rows + 1);
    private readonly List<T> _items = new(items);

    /// <summary>How many rows there are.</summary>
    public int Count => _start.Count;

    /// <summary>The items of a row. Not to be kept while items are added.</summary>
    public ReadOnlySpan<T> this[int row]
    {
        get
        {
            var end = row + 1 < _start.Count ? _start[row + 1] : _items.Count;
            return CollectionsMarshal.AsSpan(_items)[_start[row]..end];
        }
    }

    /// <summary>Begins the next row.</summary>
    public void Begin() => _start.Add(_items.Count);

    /// <summary>Adds to the row begun last.</summary>
    public void Add(T item) => _items.Add(item);

    /// <summary>Adds to the row begun last what it does not hold yet.</summary>
    public void AddNew(T item)
    {
        if (_items.IndexOf(item, _start[^1]) < 0) _items.Add(item);
    }

    /// <summary>The rows.</summary>
    public Rows<T> ToRows() => new([.. _start, _items.Count], [.. _items]);
}
