using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>The names of one sort that all packs define, in the order of the packs.</summary>
/// <param name="what">What a name stands for, as messages say it.</param>
internal sealed class NameTable<T>(string what)
    where T : class
{
    private readonly Dictionary<string, Definition<T>> _byName = new(StringComparer.Ordinal);
    private readonly List<T> _items = [];

    /// <summary>What a name stands for.</summary>
    public string What { get; } = what;

    /// <summary>What could be read, in order.</summary>
    public IReadOnlyList<T> Items => _items;

    /// <summary>Everything that is written, readable or not.</summary>
    public IEnumerable<KeyValuePair<string, Definition<T>>> Definitions => _byName;

    /// <summary>Adds a name; a second one of that name is reported. A null item is one that is written and could not be read.</summary>
    public void Add(string name, T? item, string pack, SourceSpan span, DiagnosticBag bag)
    {
        if (!_byName.TryAdd(name, new Definition<T>(item, pack, span)))
            bag.Add(Messages.DefinedTwice(span, What, name, _byName[name].Span));
        else if (item is not null)
            _items.Add(item);
    }

    /// <summary>The definition of a name, or null.</summary>
    public Definition<T>? Find(string name) => _byName.GetValueOrDefault(name);
}
