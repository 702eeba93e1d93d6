namespace ProcedureRules.Scheduling;

/// <summary>How much of something is taken over time: the technicians, or the room at a place.</summary>
internal sealed class Profile
{
    private long[] _at = new long[32];
    private int[] _taken = new int[32];
    private int _count;

    public Profile() => Clear();

    /// <summary>Nothing is taken.</summary>
    public void Clear()
    {
        _at[0] = long.MinValue;
        _taken[0] = 0;
        _count = 1;
    }

    /// <summary>The start itself where there is room until the end, else the next moment at which it is worth trying.</summary>
    public long FirstWithRoom(long start, long end, int need, int capacity)
    {
        var full = -1;
        for (var i = IndexAt(start); i < _count && _at[i] < end; i++)
            if (_taken[i] + need > capacity) full = i;
        if (full < 0) return start;
        do full++;
        while (_taken[full] + need > capacity);
        return _at[full];
    }

    /// <summary>Takes some from a start to an end.</summary>
    public void Take(long start, long end, int need)
    {
        if (start >= end) return;
        var first = Cut(start);
        var last = Cut(end);
        for (var i = first; i < last; i++) _taken[i] += need;
        Join(last);
        Join(first);
    }

    // What is taken alike on both sides of a moment is one stretch: profiles stay short.
    private void Join(int i)
    {
        if (_taken[i - 1] != _taken[i]) return;
        Array.Copy(_at, i + 1, _at, i, _count - i - 1);
        Array.Copy(_taken, i + 1, _taken, i, _count - i - 1);
        _count--;
    }

    private int IndexAt(long moment)
    {
        var (low, high) = (0, _count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (_at[middle] <= moment) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    private int Cut(long moment)
    {
        var i = IndexAt(moment);
        if (_at[i] == moment) return i;
        if (_count == _at.Length)
        {
            Array.Resize(ref _at, _count * 2);
            Array.Resize(ref _taken, _count * 2);
        }
        Array.Copy(_at, i + 1, _at, i + 2, _count - i - 1);
        Array.Copy(_taken, i + 1, _taken, i + 2, _count - i - 1);
        (_at[i + 1], _taken[i + 1]) = (moment, _taken[i]);
        _count++;
        return i + 1;
    }
}
