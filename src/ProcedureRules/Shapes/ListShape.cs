namespace ProcedureRules.Shapes;

/// <summary>A list whose items all have one shape.</summary>
internal sealed class ListShape(Shape item, int min = 0) : Shape
{
    /// <summary>What each item looks like.</summary>
    public Shape Item { get; } = item;

    /// <summary>How many items there must be at least.</summary>
    public int Min { get; } = min;
}
