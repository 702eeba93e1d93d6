using ProcedureRules.Plans;

namespace ProcedureRules.Scheduling;

/// <summary>A plan in time: who does what when, and when it is done.</summary>
public sealed class Schedule
{
    internal Schedule() { }

    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The shop.</summary>
    public required Workshop Shop { get; init; }

    /// <summary>When the job begins: the moment asked for, or the next opening.</summary>
    public required DateTime Start { get; init; }

    /// <summary>When the last step is likely to end.</summary>
    public required DateTime Finish { get; init; }

    /// <summary>The steps by their start.</summary>
    public required IReadOnlyList<ScheduledStep> Steps { get; init; }

    /// <summary>The work of all hands together.</summary>
    public required Estimate Labour { get; init; }

    /// <summary>From the start to the end of the last step, nights included.</summary>
    public required Estimate Elapsed { get; init; }

    /// <summary>Open hours in which nobody works, since all wait.</summary>
    public required TimeSpan Idle { get; init; }

    /// <summary>The steps that decide on the finish, in order.</summary>
    public required IReadOnlyList<ChainLink> CriticalChain { get; init; }

    /// <summary>What to order, borrow or arrange before starting, by when it is needed.</summary>
    public required IReadOnlyList<Preparation> Preparations { get; init; }

    /// <summary>Waits that no schedule was found to keep short enough.</summary>
    public required IReadOnlyList<UnkeptWait> UnkeptWaits { get; init; }
}
