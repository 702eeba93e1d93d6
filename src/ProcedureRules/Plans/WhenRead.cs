using System.Collections;

namespace ProcedureRules.Plans;

/// <summary>A list of a plan that is made when somebody first reads it: what only a report tells costs planning nothing. Safe on many threads.</summary>
internal sealed class WhenRead<T>(Func<IReadOnlyList<T>> make) : IReadOnlyList<T>
{
    private readonly Lazy<IReadOnlyList<T>> _list = new(make);

    public int Count => _list.Value.Count;

    public T this[int index] => _list.Value[index];

    public IEnumerator<T> GetEnumerator() => _list.Value.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
