using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>A rule as written: the language layer parses and checks what stands in it.</summary>
internal sealed class RuleDeclaration
{
    public required string Name { get; init; }
    public required string Pack { get; init; }
    public required SourceSpan Span { get; init; }

    /// <summary>Variable name, its sort as written (a kind's name or <c>step</c>).</summary>
    public IReadOnlyList<(YamlScalar Name, Snippet Sort)> Variables { get; init; } = [];
    public IReadOnlyList<Snippet> When { get; init; } = [];
    public IReadOnlyList<ConclusionDeclaration> Then { get; init; } = [];
    public Snippet? Because { get; init; }
    public string Basis { get; init; } = "";
    public IfUnknown IfUnknown { get; init; }
}
