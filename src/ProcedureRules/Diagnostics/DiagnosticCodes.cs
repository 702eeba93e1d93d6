namespace ProcedureRules.Diagnostics;

/// <summary>The closed list of everything this library can complain about.</summary>
/// <remarks>
/// PR00xx YAML and files, PR01xx the shape of a file, PR02xx names and vocabulary, PR03xx expressions, PR04xx rules,
/// PR05xx facts and vehicle sheets, PR06xx inference and its budget, PR07xx planning, PR08xx lint, PR09xx scenarios.
/// </remarks>
public static class DiagnosticCodes
{
    /// <summary>All codes, in order.</summary>
    public static IReadOnlyList<DiagnosticCode> All => Messages.Codes;

    /// <summary>The entry of a code, or null if there is no such code.</summary>
    /// <param name="code">A code such as <c>PR0101</c>, in any case.</param>
    public static DiagnosticCode? Find(string code) =>
        All.FirstOrDefault(entry => string.Equals(entry.Code, code, StringComparison.OrdinalIgnoreCase));
}
