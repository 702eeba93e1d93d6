using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>A decision table as written: each row becomes a rule.</summary>
internal sealed class TableDeclaration
{
    public required string Name { get; init; }
    public required string Pack { get; init; }
    public required SourceSpan Span { get; init; }
    public IReadOnlyList<(YamlScalar Name, Snippet Sort)> Variables { get; init; } = [];
    public IReadOnlyList<Snippet> When { get; init; } = [];

    /// <summary>The facts whose values select a row.</summary>
    public IReadOnlyList<Snippet> Inputs { get; init; } = [];

    /// <summary>The fact that a row sets.</summary>
    public required Snippet Output { get; init; }

    /// <summary>Cells of each row: one for each input (a word, a list of words by <c>|</c>, a comparison such as <c>&lt; 2 in</c>, a range, or <c>-</c> for any), then the value.</summary>
    public IReadOnlyList<IReadOnlyList<Snippet>> Rows { get; init; } = [];
    public Snippet? Because { get; init; }
    public string Basis { get; init; } = "";
}
