using System.Runtime.InteropServices;

namespace ProcedureRules.Testing.Covering;

/// <summary>Counts in how many cases something was met.</summary>
internal sealed class Tally<T>
    where T : notnull
{
    private readonly Dictionary<T, int> _counts = [];

    /// <summary>How often.</summary>
    public int this[T what] => _counts.GetValueOrDefault(what);

    /// <summary>Adds what one case met, each once.</summary>
    public void Add(IEnumerable<T> met)
    {
        foreach (var one in met) CollectionsMarshal.GetValueRefOrAddDefault(_counts, one, out _)++;
    }
}
