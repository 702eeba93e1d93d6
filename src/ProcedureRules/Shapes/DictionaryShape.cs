namespace ProcedureRules.Shapes;

/// <summary>A mapping whose keys are names that the writer chooses.</summary>
internal sealed class DictionaryShape(Shape value) : Shape
{
    /// <summary>What each value looks like.</summary>
    public Shape Value { get; } = value;

    /// <summary>The form that each key must have, if any.</summary>
    public TextPattern? KeyPattern { get; init; }
}
