namespace ProcedureRules.Scheduling;

/// <summary>How long a schedule takes things to last.</summary>
internal enum ScheduleCase
{
    /// <summary>Everything at its least; what is only possible is not done.</summary>
    Low,

    /// <summary>Labour halfway between least and most; waits at the upper end of their least, since one cut short can hurt.</summary>
    Likely,

    /// <summary>Everything at its most.</summary>
    High,
}
