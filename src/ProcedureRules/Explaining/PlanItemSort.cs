namespace ProcedureRules.Explaining;

/// <summary>What an item of a plan is.</summary>
public enum PlanItemSort
{
    /// <summary>A step.</summary>
    Step,

    /// <summary>That one step comes before another.</summary>
    Order,

    /// <summary>A fact, as it is known and as it is demanded.</summary>
    Figure,

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

    /// <summary>What would tell causes apart.</summary>
    TellingCheck,

    /// <summary>What is assumed.</summary>
    Assumption,

    /// <summary>Statements that contradict each other.</summary>
    Conflict,
}
