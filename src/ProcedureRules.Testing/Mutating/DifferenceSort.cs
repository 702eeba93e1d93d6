namespace ProcedureRules.Testing.Mutating;

/// <summary>How a difference at a moment may show in its plan, the likeliest first.</summary>
internal enum DifferenceSort
{
    /// <summary>Nothing is known that hides it.</summary>
    Plain,

    /// <summary>What a step needs: the order of the steps may meet it unasked.</summary>
    Order,

    /// <summary>What it hangs on is not known.</summary>
    Open,

    /// <summary>Others say the same, or it is so without any step.</summary>
    Anyway,

    /// <summary>The plan does not have the steps that it is about.</summary>
    Absent,
}
