namespace ProcedureRules.Inference;

/// <summary>What produced a record.</summary>
public enum Mechanism
{
    /// <summary>A rule: authored, a table row, or made from an operation or a job.</summary>
    Rule,

    /// <summary>One option of a rule's <c>one_of</c>.</summary>
    Option,

    /// <summary>A wanted state concludes the step that reaches it (or the choice between several).</summary>
    Reach,

    /// <summary>One of several ways to a wanted state, when chosen.</summary>
    Alternative,

    /// <summary>A step wants the states it starts from.</summary>
    Start,

    /// <summary>A step brings the step that undoes it.</summary>
    Undo,

    /// <summary>An aspect that is not in its normal state on arrival is wanted there at the end.</summary>
    Arrival,

    /// <summary>
    /// A part brings the steps that find out what can be known of it: they may occur, never have to; planning draws one in where the fact is
    /// not known and matters.
    /// </summary>
    Find,
}
