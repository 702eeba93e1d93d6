using ProcedureRules.Plans;

namespace ProcedureRules.Scheduling;

/// <summary>A step with its time, reckoned with the likely length of all steps.</summary>
public sealed class ScheduledStep
{
    /// <summary>The step.</summary>
    public required PlanStep Step { get; init; }

    /// <summary>When it starts.</summary>
    public required DateTime Start { get; init; }

    /// <summary>When it ends.</summary>
    public required DateTime End { get; init; }

    /// <summary>The numbers of the technicians who do it, from 1.</summary>
    public required IReadOnlyList<int> Technicians { get; init; }

    /// <summary>How many people it takes besides the technicians of the shop.</summary>
    public required int Helpers { get; init; }

    /// <summary>When the last of its waits is over; null where it has none.</summary>
    public required DateTime? WaitOver { get; init; }

    /// <summary>Whether it goes on over a closing time: it takes longer than the shop is ever open.</summary>
    public required bool IsSplit { get; init; }

    /// <summary>Whether it lies on the critical chain.</summary>
    public required bool IsCritical { get; init; }

    /// <summary>Whether everybody else keeps away meanwhile.</summary>
    public required bool IsAlone { get; init; }
}
