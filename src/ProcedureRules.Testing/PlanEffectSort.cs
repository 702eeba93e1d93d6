namespace ProcedureRules.Testing;

/// <summary>What becomes of something in a plan.</summary>
public enum PlanEffectSort
{
    /// <summary>It comes in.</summary>
    In,

    /// <summary>It goes.</summary>
    Out,

    /// <summary>A step has another turn.</summary>
    Moved,

    /// <summary>A step is told or timed otherwise, or is no longer as sure.</summary>
    Otherwise,
}
