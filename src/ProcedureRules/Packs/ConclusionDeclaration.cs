using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>A conclusion as written: its keyword, the text behind it, and what stands beside it.</summary>
internal sealed class ConclusionDeclaration
{
    /// <summary>need, end, order, forbid, do, offer, one_of, set, at_least, at_most, danger, warning, caution, notice, check, supply, tool, wait, relate, for, against, exclude, stop.</summary>
    public required string Keyword { get; init; }
    public required SourceSpan Span { get; init; }

    /// <summary>The main text; for set / at_least / at_most the value expression.</summary>
    public Snippet? Text { get; init; }

    /// <summary>For set / at_least / at_most: the fact's path.</summary>
    public Snippet? Target { get; init; }

    /// <summary>What stands beside the keyword: at, way, text, during, least, most, from, until, strength, rank...</summary>
    public IReadOnlyDictionary<string, Snippet> Beside { get; init; } = new Dictionary<string, Snippet>();
    public IfUnknown IfUnknown { get; init; }

    /// <summary>For one_of.</summary>
    public IReadOnlyList<OptionDeclaration> Options { get; init; } = [];
}
