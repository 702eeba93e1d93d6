namespace ProcedureRules.Explaining;

/// <summary>What an item of a plan is.</summary>
public enum PlanItemSort
{
    /// <summary>A stop.</summary>
    Stop,

    /// <summary>A caution with its signal word.</summary>
    Caution,

    /// <summary>A check.</summary>
    Check,

    /// <summary>A wait.</summary>
    Wait,

    /// <summary>A hold.</summary>
    Hold,

    /// <summary>A detail line.</summary>
    Detail,

    /// <summary>A choice with the way taken.</summary>
    Choice,

    /// <summary>A cause with what the findings say of it.</summary>
    Finding,

    /// <summary>A question.</summary>
    Question,

    /// <summary>A tool.</summary>
    Tool,

    /// <summary>A supply.</summary>
    Supply,

    /// <summary>Optional work.</summary>
    Offer,
}
