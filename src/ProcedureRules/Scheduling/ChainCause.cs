namespace ProcedureRules.Scheduling;

/// <summary>Why a step of the critical chain starts no earlier.</summary>
public enum ChainCause
{
    /// <summary>The job begins with it.</summary>
    Begin,

    /// <summary>It has to come after the step before it in the chain.</summary>
    Order,

    /// <summary>A wait runs, after the step before it or since an event before the job.</summary>
    Wait,

    /// <summary>The technicians are busy with the step before it.</summary>
    Technicians,

    /// <summary>The step before it takes up the place.</summary>
    Place,

    /// <summary>The shop was closed, or would close before it is done.</summary>
    Hours,
}
