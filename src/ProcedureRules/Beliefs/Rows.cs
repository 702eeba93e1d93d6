namespace ProcedureRules.Beliefs;

/// <summary>A short list of items for each index, all in one array.</summary>
internal sealed class Rows<T>
{
    private readonly int[] _start;
    private readonly T[] _items;

    /// <summary>Rows that lie one after another: where each begins, with the end of the last.</summary>
    public Rows(int[] start, T[] items)
    {
        _start = start;
        _items = items;
    }

    /// <summary>The items of a row.</summary>
    public ReadOnlySpan<T> this[int row] => _items.AsSpan(_start[row], _start[row + 1] - _start[row]);

    /// <summary>Sorts items into their rows; within a row they keep their order.</summary>
    public static Rows<T> Of(int rows, IReadOnlyList<(int Row, T Item)> items)
    {
        var start = new int[rows + 1];
        foreach (var (row, _) in items) start[row + 1]++;
        for (var row = 0; row < rows; row++) start[row + 1] += start[row];
        var next = start.AsSpan(0, rows).ToArray();
        var sorted = new T[items.Count];
        foreach (var (row, item) in items) sorted[next[row]++] = item;
        return new(start, sorted);
    }
}
