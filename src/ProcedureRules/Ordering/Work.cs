using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Ordering;

/// <summary>A kind of step as the sequencer sees it.</summary>
internal sealed class Work
{
    public required int Index { get; init; }
    public required Step Step { get; init; }

    /// <summary>Whether it has to occur at least once, whatever the moments of the plan are.</summary>
    public required bool IsDue { get; init; }

    /// <summary>Whether it occurs only to undo another step.</summary>
    public required bool IsOnlyUndoing { get; init; }

    /// <summary>Where its place stands in the packs' list of places.</summary>
    public required int Place { get; init; }

    public Shift[] Shifts { get; set; } = [];
    public Condition[] Needs { get; set; } = [];

    /// <summary>States of the moment in which it is forbidden.</summary>
    public IReadOnlyList<IReadOnlyList<Guard>> ForbiddenWhen { get; set; } = [];

    /// <summary>Edges of which it is the second.</summary>
    public List<OrderEdge> Before { get; } = [];

    /// <summary>Edges of which it is the first.</summary>
    public List<OrderEdge> Behind { get; } = [];

    public Work? Undoes { get; set; }
    public Work? UndoneBy { get; set; }

    /// <summary>Whether what it changes has to come back (a job's end state may say otherwise).</summary>
    public bool IsReturned { get; set; }

    /// <summary>Whether it belongs to the way back: putting back, proving, and what only they need.</summary>
    public bool IsWayBack => Phase >= Phase.Back || (Step.Operation.Undoes is not null && !IsDue);

    /// <summary>The steps of the way back for which alone it is done; empty where it has a purpose of its own.</summary>
    public IReadOnlyList<Work> Serves { get; set; } = [];

    /// <summary>The part of the work by which it takes its turn.</summary>
    public Phase Phase => Serves.Count > 0 && Step.Operation.Phase < Phase.Back ? Phase.Back : Step.Operation.Phase;

    public override string ToString() => Step.Name;
}
