namespace ProcedureRules.Reports;

/// <summary>What every report ends with.</summary>
public static class SafetyNote
{
    /// <summary>The words.</summary>
    public const string Text =
        "This plan was derived from rules and from what was told of this vehicle. The maker's instructions, the law and local codes come first; "
        + "work that takes a licence or a certificate is for those who hold it. Stop where the vehicle differs from the plan.";
}
