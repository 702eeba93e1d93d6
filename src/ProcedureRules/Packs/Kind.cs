using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;

namespace ProcedureRules.Packs;

/// <summary>A kind of part that packs talk about ("starter"), with the more general kind it belongs to.</summary>
public sealed class Kind
{
    /// <summary>The name used in packs and sheets.</summary>
    public required string Name { get; init; }

    /// <summary>The words a technician reads.</summary>
    public required string Text { get; init; }

    /// <summary>The more general kind; null only for the root kind <c>part</c>.</summary>
    public Kind? Parent { get; init; }

    /// <summary>What a sheet's silence about this kind means: <see cref="Truth.No"/> (not fitted) or <see cref="Truth.Unknown"/> (asked).</summary>
    public Truth IfSilent { get; init; }

    /// <summary>
    /// Kinds of which a vehicle that has such a part always has one, too, those of its more general kinds not repeated: a sheet that names a starter
    /// and no battery has forgotten it.
    /// </summary>
    public IReadOnlyList<Kind> GoesWith { get; internal set; } = [];

    /// <summary>The pack that defines it; empty for the root kind.</summary>
    public string Pack { get; init; } = "";

    /// <summary>Where it is defined.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Whether this kind is <paramref name="other"/> or one of its more special kinds.</summary>
    public bool IsA(Kind other)
    {
        for (var kind = this; kind is not null; kind = kind.Parent)
            if (ReferenceEquals(kind, other)) return true;
        return false;
    }

    /// <summary>This kind and all more general ones, the most special first.</summary>
    public IEnumerable<Kind> Lineage()
    {
        for (var kind = this; kind is not null; kind = kind.Parent) yield return kind;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
