using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>A declaration of a pack, or an archetype sheet, that differs between two versions.</summary>
/// <param name="Pack">The pack; empty for an archetype.</param>
/// <param name="Sort">What it is, as packs write it: <c>rule</c>, <c>operation</c>, <c>fact</c>, <c>archetype</c> and so on.</param>
/// <param name="Name">Its name: of what was renamed, the new one.</param>
/// <param name="Kind">What became of it.</param>
/// <param name="Keys">The keys under which it is written otherwise; empty where it is new, gone or renamed.</param>
/// <param name="Due">The number of the pack's version that has to be stepped for it.</param>
/// <param name="Span">Where it is written, in the version after where it stands there.</param>
public sealed record PackChange(string Pack, string Sort, string Name, PackChangeKind Kind, IReadOnlyList<string> Keys, VersionPart Due, SourceSpan Span)
{
    /// <summary>The name before, where it was renamed.</summary>
    public string? OldName { get; init; }

    /// <summary>In words: <c>rule 'the cowl comes off first' is new</c>.</summary>
    public override string ToString() => $"{Sort} '{Name}' " + Kind switch
    {
        PackChangeKind.Added => "is new",
        PackChangeKind.Removed => "is gone",
        PackChangeKind.Renamed => $"was '{OldName}'",
        _ => Keys.Count == 0 ? "has changed" : $"has changed: {string.Join(", ", Keys)}",
    };
}
