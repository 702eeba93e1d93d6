using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;

namespace ProcedureRules.Packs;

/// <summary>How two parts can stand to each other (covers, carries, is joined to).</summary>
public sealed class Relation
{
    /// <summary>The name used in packs and sheets.</summary>
    public required string Name { get; init; }

    /// <summary>The kind of the first part.</summary>
    public required Kind First { get; init; }

    /// <summary>The kind of the second part.</summary>
    public required Kind Second { get; init; }

    /// <summary>The sentence a technician reads; <c>{a}</c> and <c>{b}</c> are the parts.</summary>
    public required string Text { get; init; }

    /// <summary>What a sheet's silence about two parts means: no, or unknown (then it is asked).</summary>
    public Truth IfSilent { get; init; }

    /// <summary>State conditions over <c>a</c> and <c>b</c> in which alone it holds; empty: always.</summary>
    public IReadOnlyList<Snippet> HoldsWhile { get; init; } = [];

    /// <summary>How to find out whether it holds.</summary>
    public string? How { get; init; }

    /// <summary>The pack that defines it.</summary>
    public string Pack { get; init; } = "";

    /// <summary>Where it is defined.</summary>
    public SourceSpan Span { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
