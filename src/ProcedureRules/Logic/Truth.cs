namespace ProcedureRules.Logic;

/// <summary>What can be said of a condition: it holds, it does not, or the known facts leave it open.</summary>
/// <remarks>The order of the values is the order of strong Kleene logic: no, unknown, yes.</remarks>
public enum Truth : byte
{
    /// <summary>The condition does not hold, whatever is still unknown.</summary>
    No,

    /// <summary>The known facts leave the condition open.</summary>
    Unknown,

    /// <summary>The condition holds, whatever is still unknown.</summary>
    Yes,
}
