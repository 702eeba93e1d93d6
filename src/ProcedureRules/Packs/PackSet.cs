using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>The packs of a rules folder as read: one vocabulary, all rules and tables as written.</summary>
internal sealed class PackSet
{
    public required IReadOnlyList<PackHeader> Headers { get; init; }

    public required Vocabulary Vocabulary { get; init; }

    public IReadOnlyList<RuleDeclaration> Rules { get; init; } = [];

    public IReadOnlyList<RuleDeclaration> Laws { get; init; } = [];

    public IReadOnlyList<TableDeclaration> Tables { get; init; } = [];

    /// <summary>The files that the packs were read from.</summary>
    public IReadOnlyList<SourceFile> Files { get; init; } = [];

    /// <summary>Archetype sheets found beside the packs, by name.</summary>
    public IReadOnlyDictionary<string, SourceFile> Archetypes { get; init; } = new Dictionary<string, SourceFile>();

    /// <summary>Names and paths that are written and could not be read: whoever meets one stays quiet, it has been reported.</summary>
    public IReadOnlySet<string> Broken { get; init; } = new HashSet<string>();

    /// <summary>Packs that use a pack which is missing or unreadable: a name that is not found there says nothing about its spelling.</summary>
    public IReadOnlySet<string> WithGaps { get; init; } = new HashSet<string>();

    /// <summary>Findings of the check of style that packs accept, each with its reason.</summary>
    public IReadOnlyList<Acceptance> Accepted { get; init; } = [];

    /// <summary>Whether a pack may use what another defines.</summary>
    public bool MayUse(string pack, string definedIn) =>
        definedIn.Length == 0 || pack == definedIn || Headers.Any(header => header.Name == pack && header.Uses.Contains(definedIn));
}
