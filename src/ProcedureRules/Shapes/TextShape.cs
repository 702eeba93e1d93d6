namespace ProcedureRules.Shapes;

/// <summary>Any text, or one of a given form.</summary>
internal sealed class TextShape : Shape
{
    /// <summary>What the text is, such as <c>expression</c>, <c>template</c>, <c>quantity</c> or <c>name</c>.</summary>
    public string? Format { get; init; }

    /// <summary>The form that the whole text must have, if any.</summary>
    public TextPattern? Pattern { get; init; }

    /// <summary>Texts that are right.</summary>
    public IReadOnlyList<string> Examples { get; init; } = [];
}
