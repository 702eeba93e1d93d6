namespace ProcedureRules.Testing.Mutating;

/// <summary>What a line of an approved plan is that names its rule.</summary>
internal enum SignSort
{
    Caution,
    Detail,
    Check,
    Wait,
    Hold,
    Tool,
    Supply,
    Offer,
    Stop,
    Finding,
    Set,
    Demand,

    /// <summary>A step that stands where it does since the rule orders it.</summary>
    Order,

    /// <summary>A step that takes longer since the rule says so.</summary>
    Slower,

    /// <summary>A step or a choice that the rule asks for, or a state that leads to it.</summary>
    Wants,
}
