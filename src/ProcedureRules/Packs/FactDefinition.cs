using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;

namespace ProcedureRules.Packs;

/// <summary>Something that can be known of a kind of part, and how to find it out.</summary>
public sealed class FactDefinition
{
    /// <summary>The kind it is a fact of; special kinds inherit it.</summary>
    public required Kind Kind { get; init; }

    /// <summary>The name behind the dot.</summary>
    public required string Name { get; init; }

    /// <summary>What values it can have.</summary>
    public required FactType Type { get; init; }

    /// <summary>The values that can occur in the trade; what an unknown quantity is taken to be. Null for words and text.</summary>
    public Quantity? Plausible { get; init; }

    /// <summary>The question as put to the technician; may hold <c>{it}</c>.</summary>
    public required Snippet Ask { get; init; }

    /// <summary>How to find it out.</summary>
    public Snippet? How { get; init; }

    /// <summary>The operation that finds it out, when that is work of its own (null: a question at the counter).</summary>
    public string? FindOperation { get; init; }

    /// <summary>The aspects a reading rests on ("kind.aspect"): a step that changes one makes the reading old.</summary>
    public IReadOnlyList<string> TakenIn { get; init; } = [];

    /// <summary>Whether nobody is ever asked for it, since only rules set it.</summary>
    public bool IsDerived { get; init; }

    /// <summary>Whether a value may be a demand only (at_least / at_most), such as the rise a job needs.</summary>
    public bool IsDemand { get; init; }

    /// <summary>The pack that defines it.</summary>
    public string Pack { get; init; } = "";

    /// <summary>Where it is defined.</summary>
    public SourceSpan Span { get; init; }

    /// <inheritdoc/>
    public override string ToString() => $"{Kind.Name}.{Name}";
}
