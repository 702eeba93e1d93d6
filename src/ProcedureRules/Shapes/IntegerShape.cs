namespace ProcedureRules.Shapes;

/// <summary>A whole number within bounds.</summary>
internal sealed class IntegerShape(int min, int max) : Shape
{
    /// <summary>The least that is allowed.</summary>
    public int Min { get; } = min;

    /// <summary>The most that is allowed.</summary>
    public int Max { get; } = max;
}
