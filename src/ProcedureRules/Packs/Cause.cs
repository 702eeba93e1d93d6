using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>Something that can be wrong with a kind of part, for or against which findings speak.</summary>
public sealed class Cause
{
    /// <summary>The name used in packs.</summary>
    public required string Name { get; init; }

    /// <summary>The kind it can befall.</summary>
    public required Kind On { get; init; }

    /// <summary>The sentence a technician reads; may hold <c>{it}</c>.</summary>
    public required Snippet Text { get; init; }

    /// <summary>The pack that defines it.</summary>
    public string Pack { get; init; } = "";

    /// <summary>Where it is defined.</summary>
    public SourceSpan Span { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
