namespace ProcedureRules.Beliefs;

/// <summary>
/// An array in pages that its forks share until one of them writes: a hypothesis copies what it touches, not the whole network. Written
/// only by the propagation that made it, and never after its state has been handed out.
/// </summary>
internal sealed class Paged<T>
{
    private const int Bits = 5;
    private const int Mask = (1 << Bits) - 1;
    private readonly T[][] _pages;
    private readonly bool[] _owned;

    /// <summary>An array of default items.</summary>
    public Paged(int count)
    {
        _pages = new T[(count + Mask) >> Bits][];
        _owned = new bool[_pages.Length];
        for (var page = 0; page < _pages.Length; page++) _pages[page] = new T[Mask + 1];
        Array.Fill(_owned, true);
    }

    private Paged(T[][] pages)
    {
        _pages = pages;
        _owned = new bool[pages.Length];
    }

    /// <summary>An item.</summary>
    public ref readonly T this[int index] => ref _pages[index >> Bits][index & Mask];

    /// <summary>A copy that shares every page.</summary>
    public Paged<T> Fork() => new([.. _pages]);

    /// <summary>The indices at which the items of two forks differ.</summary>
    public IEnumerable<int> DifferencesFrom(Paged<T> other)
    {
        for (var page = 0; page < _pages.Length; page++)
        {
            if (ReferenceEquals(_pages[page], other._pages[page])) continue;
            for (var at = 0; at <= Mask; at++)
                if (!EqualityComparer<T>.Default.Equals(_pages[page][at], other._pages[page][at])) yield return (page << Bits) | at;
        }
    }

    /// <summary>Writes an item.</summary>
    public void Set(int index, T item)
    {
        var page = index >> Bits;
        if (!_owned[page])
        {
            _pages[page] = [.. _pages[page]];
            _owned[page] = true;
        }

        _pages[page][index & Mask] = item;
    }
}
