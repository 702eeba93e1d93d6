namespace ProcedureRules.Diagnostics;

/// <summary>How much a diagnostic weighs.</summary>
public enum Severity
{
    /// <summary>The file cannot be used until this is mended.</summary>
    Error,

    /// <summary>The file can be used; something in it is likely not what was meant.</summary>
    Warning,

    /// <summary>Something worth knowing; nothing has to change.</summary>
    Note,
}
