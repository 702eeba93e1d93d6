namespace ProcedureRules.Shapes;

/// <summary>A mapping with known keys; any other key is a mistake.</summary>
internal sealed class MapShape : Shape
{
    private readonly Dictionary<string, Field> _byName;

    /// <summary>Makes a mapping of fields.</summary>
    /// <param name="noun">What the mapping is, with its article: <c>a rule</c>.</param>
    /// <param name="fields">Its keys, in the order of the reference.</param>
    public MapShape(string noun, params IReadOnlyList<Field> fields)
    {
        Noun = noun;
        Fields = fields;
        _byName = fields.ToDictionary(field => field.Name, StringComparer.Ordinal);
    }

    /// <summary>What the mapping is, with its article.</summary>
    public string Noun { get; }

    /// <summary>The keys, in the order of the reference.</summary>
    public IReadOnlyList<Field> Fields { get; }

    /// <summary>The field of a key, or null.</summary>
    public Field? Field(string name) => _byName.GetValueOrDefault(name);
}
