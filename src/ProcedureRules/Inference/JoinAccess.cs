namespace ProcedureRules.Inference;

/// <summary>By which index a condition is matched, which depends on what is bound before it.</summary>
internal enum JoinAccess
{
    /// <summary>All its objects are bound: is there such a ground fact?</summary>
    Exact,

    /// <summary>The first object is bound.</summary>
    ByFirst,

    /// <summary>The second object is bound.</summary>
    BySecond,

    /// <summary>Nothing is bound.</summary>
    All,
}
