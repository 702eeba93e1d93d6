namespace ProcedureRules.Language;

/// <summary>What a variable of a rule stands for.</summary>
public enum Sort
{
    /// <summary>A part of the vehicle.</summary>
    Part,

    /// <summary>A step of the plan.</summary>
    Step,
}
