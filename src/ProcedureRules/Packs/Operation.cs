using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;

namespace ProcedureRules.Packs;

/// <summary>Something a technician does to a part of a kind: it changes aspects and has needs, time, place, tools.</summary>
public sealed class Operation
{
    /// <summary>The name used in packs.</summary>
    public required string Name { get; init; }

    /// <summary>The kind of part worked on (<c>it</c>).</summary>
    public required Kind On { get; init; }

    /// <summary>The instruction; a template.</summary>
    public required Snippet Text { get; init; }

    /// <summary>The states it changes; empty for an action that leaves none (a measurement, a clean-up).</summary>
    public IReadOnlyList<StateChange> Changes { get; init; } = [];

    /// <summary>The name of the operation that undoes it; null where nothing does.</summary>
    public string? Undo { get; init; }

    /// <summary>The operation this one undoes, set by the reader.</summary>
    public Operation? Undoes { get; internal set; }

    /// <summary>The operation that undoes this one, set by the reader.</summary>
    public Operation? UndoneBy { get; internal set; }

    /// <summary>Where the technician stands (a place that a pack declares).</summary>
    public required string Place { get; init; }

    /// <summary>How long it takes, as an interval of duration.</summary>
    public required Quantity Time { get; init; }

    /// <summary>How many people it takes.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>The labour: the time of all people that it takes.</summary>
    public Quantity Labour => OfAll(Time);

    /// <summary>The part of the work it belongs to.</summary>
    public required Phase Phase { get; init; }

    /// <summary>Needs from its start to its end (its own; an undoing step also has its step's).</summary>
    public IReadOnlyList<OperationNeed> Needs { get; init; } = [];

    /// <summary>Kinds of part it touches, besides the one worked on.</summary>
    public IReadOnlyList<Kind> Touches { get; init; } = [];

    /// <summary>Kinds of part it moves; <c>it</c> where it moves the part worked on.</summary>
    public IReadOnlyList<Kind> Moves { get; init; } = [];

    /// <summary>Whether it moves the part worked on.</summary>
    public bool MovesIt { get; init; }

    /// <summary>The energies met (words that a pack declares).</summary>
    public IReadOnlyList<string> Energies { get; init; } = [];

    /// <summary>Tools, as templates.</summary>
    public IReadOnlyList<Snippet> Tools { get; init; } = [];

    /// <summary>Supplies, as templates.</summary>
    public IReadOnlyList<Snippet> Supplies { get; init; } = [];

    /// <summary>Figures without which the step is not done ("kind.fact" or "it.fact"): the plan holds there and asks.</summary>
    public IReadOnlyList<Snippet> Figures { get; init; } = [];

    /// <summary>Detail lines, as templates.</summary>
    public IReadOnlyList<Snippet> Detail { get; init; } = [];

    /// <summary>Why it is done, where no rule says so.</summary>
    public Snippet? Because { get; init; }

    /// <summary>Where the knowledge comes from.</summary>
    public string Basis { get; init; } = "";

    /// <summary>The pack that defines it.</summary>
    public string Pack { get; init; } = "";

    /// <summary>Where it is defined.</summary>
    public SourceSpan Span { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>The labour of a time: all people that it takes work that long.</summary>
    internal Quantity OfAll(Quantity time) => Quantity.Between(time.Low * Hands, time.High * Hands, Dimension.Duration);
}
