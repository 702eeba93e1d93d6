using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>A job that can be asked for: the end states it wants, the states to pass, the work it adds, what it must know.</summary>
public sealed class JobDefinition
{
    /// <summary>The name used in packs and work orders.</summary>
    public required string Name { get; init; }

    /// <summary>The words a technician reads.</summary>
    public required Snippet Text { get; init; }

    /// <summary>The kind of part the job is on (<c>it</c>); null for a job on the vehicle.</summary>
    public Kind? On { get; init; }

    /// <summary>State conditions that hold at the end.</summary>
    public IReadOnlyList<Snippet> Ends { get; init; } = [];

    /// <summary>State conditions to pass, in this order.</summary>
    public IReadOnlyList<Snippet> Waypoints { get; init; } = [];

    /// <summary>Operations it adds, written <c>operation(part)</c>.</summary>
    public IReadOnlyList<Snippet> Work { get; init; } = [];

    /// <summary>Facts it must know, written <c>kind.fact</c>.</summary>
    public IReadOnlyList<Snippet> Know { get; init; } = [];

    /// <summary>Forms of the job that a fact selects; each adds to the above.</summary>
    public IReadOnlyList<JobVariant> Variants { get; init; } = [];

    /// <summary>The pack that defines it.</summary>
    public string Pack { get; init; } = "";

    /// <summary>Where it is defined.</summary>
    public SourceSpan Span { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
