using ProcedureRules.Language;

namespace ProcedureRules.Mechanics;

/// <summary>The functions about moving, carrying and fastening that packs can call.</summary>
public static class MechanicsFunctions
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FunctionDefinition> All { get; } = [.. RiseFunctions.All, .. BalanceFunctions.All, .. FastenerFunctions.All];
}
