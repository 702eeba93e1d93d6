namespace ProcedureRules.Language;

/// <summary>What a finding says of a cause.</summary>
public enum Speaks
{
    /// <summary>For it.</summary>
    For,

    /// <summary>Against it.</summary>
    Against,

    /// <summary>It cannot be.</summary>
    Excludes,
}
