namespace ProcedureRules.Explaining;

/// <summary>What a sentence of an explanation is.</summary>
public enum WhyNodeSort
{
    /// <summary>The item of the plan that is explained.</summary>
    Item,

    /// <summary>A rule, an operation or a job of a pack, or what planning adds of itself.</summary>
    Rule,

    /// <summary>What a pack declares without any condition, and what planning makes of that, such as a rank or a comparison of times.</summary>
    Declaration,

    /// <summary>A condition of a rule, with what it comes to.</summary>
    Condition,

    /// <summary>A step of the plan that asks for it.</summary>
    Step,

    /// <summary>A state that is wanted.</summary>
    Want,

    /// <summary>A choice between ways.</summary>
    Choice,

    /// <summary>A fact, a relation or a part, with its source; what rules worked out rests on more.</summary>
    Fact,

    /// <summary>A job that was asked for.</summary>
    Job,

    /// <summary>A state of a part, as it is on arrival or as a step leaves it.</summary>
    State,

    /// <summary>What was told above already.</summary>
    Repeated,

    /// <summary>The explanation goes on, and is cut off here.</summary>
    CutOff,
}
