namespace ProcedureRules.Shapes;

/// <summary>A shape by its name: written once in the schema, and able to hold itself.</summary>
internal sealed class RefShape(string name, Func<Shape> target) : Shape
{
    /// <summary>The name in the schema's definitions.</summary>
    public string Name { get; } = name;

    /// <summary>The shape that is meant; looked up late, as it may still be under construction when this one is made.</summary>
    public Shape Target => target();

    /// <summary>The shape itself, behind any names.</summary>
    public static Shape Resolve(Shape shape)
    {
        while (shape is RefShape named)
            shape = named.Target;

        return shape;
    }
}
