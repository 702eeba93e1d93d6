namespace ProcedureRules.Testing;

/// <summary>What became of something that a pack declares.</summary>
public enum PackChangeKind
{
    /// <summary>It is new.</summary>
    Added,

    /// <summary>It is gone.</summary>
    Removed,

    /// <summary>It is written otherwise.</summary>
    Changed,

    /// <summary>It has another name and is the same otherwise.</summary>
    Renamed,
}
