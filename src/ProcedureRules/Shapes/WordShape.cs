namespace ProcedureRules.Shapes;

/// <summary>One word of a closed list.</summary>
internal sealed class WordShape(params IReadOnlyList<string> words) : Shape
{
    /// <summary>The words, in the order in which they are told.</summary>
    public IReadOnlyList<string> Words { get; } = words;
}
