namespace ProcedureRules.Scheduling;

/// <summary>What is to be there in time.</summary>
public enum PreparationKind
{
    /// <summary>A supply to order or have.</summary>
    Supply,

    /// <summary>A tool to have or borrow.</summary>
    Tool,

    /// <summary>People to lend a hand, where a step takes more than there are technicians.</summary>
    Helper,
}
