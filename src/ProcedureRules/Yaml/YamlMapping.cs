using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>A mapping of keys to values, in file order; each key stands once.</summary>
/// <remarks>
/// The typed look-ups answer null or nothing where the key is missing or holds another kind: the shape check has
/// already complained, so a reader goes on with what there is.
/// </remarks>
internal sealed class YamlMapping : YamlNode
{
    private readonly Dictionary<string, YamlEntry> _byKey;

    /// <summary>Makes a mapping of entries with different keys.</summary>
    public YamlMapping(SourceSpan span, IReadOnlyList<YamlEntry> entries)
        : base(span)
    {
        Entries = entries;
        _byKey = entries.ToDictionary(entry => entry.Name, StringComparer.Ordinal);
    }

    /// <summary>The entries in file order.</summary>
    public IReadOnlyList<YamlEntry> Entries { get; }

    /// <inheritdoc/>
    public override string Kind => "a mapping";

    /// <summary>Whether the key is written.</summary>
    public bool Has(string key) => _byKey.ContainsKey(key);

    /// <summary>The entry of a key, or null.</summary>
    public YamlEntry? Entry(string key) => _byKey.GetValueOrDefault(key);

    /// <summary>The value of a key, or null.</summary>
    public YamlNode? Value(string key) => Entry(key)?.Value;

    /// <summary>The text of a key with its place, or null.</summary>
    public YamlScalar? Scalar(string key) => Value(key) as YamlScalar;

    /// <summary>The text of a key, or null.</summary>
    public string? Text(string key) => Scalar(key)?.Text;

    /// <summary>The answer of a key that holds <c>yes</c> or <c>no</c>, or null.</summary>
    public bool? YesNo(string key) => Scalar(key)?.AsYesNo();

    /// <summary>The whole number of a key, or null.</summary>
    public int? Integer(string key) => Scalar(key)?.AsInteger();

    /// <summary>The mapping of a key, or null.</summary>
    public YamlMapping? Map(string key) => Value(key) as YamlMapping;

    /// <summary>The items of the list of a key; empty if there is none.</summary>
    public IReadOnlyList<YamlNode> List(string key) => (Value(key) as YamlSequence)?.Items ?? [];

    /// <summary>The mappings in the list of a key; empty if there is none.</summary>
    public IEnumerable<YamlMapping> Maps(string key) => List(key).OfType<YamlMapping>();

    /// <summary>The texts in the list of a key; empty if there is none.</summary>
    public IEnumerable<YamlScalar> Scalars(string key) => List(key).OfType<YamlScalar>();
}
