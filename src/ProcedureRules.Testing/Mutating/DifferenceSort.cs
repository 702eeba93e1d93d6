namespace ProcedureRules.Testing.Mutating;

/// <summary>How a difference at a moment may show in its plan, the likeliest first.</summary>
internal enum DifferenceSort
{
    /// <summary>Nothing is known that hides it.</summary>
    Plain,

    /// <summary>What a step needs, or comes after, of the step right before it.</summary>
    Next,

    /// <summary>What a step needs, or comes after: the steps may come in the same order unasked, since other things keep them in it.</summary>
    Order,

    /// <summary>What it hangs on is not known.</summary>
    Open,

    /// <summary>Others say the same, or it is so without any step.</summary>
    Anyway,

    /// <summary>It only makes a difference to what hangs on something unknown that the plan does not ask for.</summary>
    Unasked,

    /// <summary>The plan does not have the steps that it is about, or says the same in the same words.</summary>
    Absent,
}
