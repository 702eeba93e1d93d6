namespace ProcedureRules.Packs;

/// <summary>The part of the work a step belongs to; steps that are free to move stand in this order.</summary>
public enum Phase
{
    /// <summary>Before the first bolt: make safe, order, borrow.</summary>
    Prepare,

    /// <summary>Find something out.</summary>
    Check,

    /// <summary>Take apart.</summary>
    Apart,

    /// <summary>The work itself, while it is open.</summary>
    Work,

    /// <summary>Put back.</summary>
    Back,

    /// <summary>Prove the result.</summary>
    Prove,
}
