namespace ProcedureRules.Shapes;

/// <summary>A named key of a <see cref="MapShape"/>.</summary>
internal sealed class Field
{
    private Field(string name, Shape shape, string documentation, bool required)
    {
        Name = name;
        Shape = shape;
        Documentation = documentation;
        IsRequired = required;
    }

    /// <summary>The key.</summary>
    public string Name { get; }

    /// <summary>What its value looks like.</summary>
    public Shape Shape { get; }

    /// <summary>What it means, in one line.</summary>
    public string Documentation { get; }

    /// <summary>Whether it has to be written.</summary>
    public bool IsRequired { get; }

    /// <summary>What holds if it is not written, as one would write it.</summary>
    public string? Default { get; private init; }

    /// <summary>A key that has to be written.</summary>
    public static Field Required(string name, Shape shape, string documentation) => new(name, shape, documentation, true);

    /// <summary>A key that may be left out.</summary>
    public static Field Optional(string name, Shape shape, string documentation, string? whenLeftOut = null) =>
        new(name, shape, documentation, false) { Default = whenLeftOut };
}
