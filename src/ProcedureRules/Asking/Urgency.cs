namespace ProcedureRules.Asking;

/// <summary>The order in which questions are asked.</summary>
internal enum Urgency
{
    /// <summary>It decides on a danger or a stop.</summary>
    Safety,

    /// <summary>It decides which way is taken or what work is done.</summary>
    Work,

    /// <summary>A figure without which a step is not done, or which the job has to know.</summary>
    Figure,

    /// <summary>It decides on a check, a tool, a supply, a finding.</summary>
    Other,
}
