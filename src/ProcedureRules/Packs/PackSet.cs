using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>The packs of a rules folder as read: one vocabulary, all rules and tables as written.</summary>
internal sealed class PackSet
{
    public required IReadOnlyList<PackHeader> Headers { get; init; }
    public required Vocabulary Vocabulary { get; init; }
    public IReadOnlyList<RuleDeclaration> Rules { get; init; } = [];
    public IReadOnlyList<TableDeclaration> Tables { get; init; } = [];

    /// <summary>Archetype sheets found beside the packs, by name.</summary>
    public IReadOnlyDictionary<string, SourceFile> Archetypes { get; init; } = new Dictionary<string, SourceFile>();
}
