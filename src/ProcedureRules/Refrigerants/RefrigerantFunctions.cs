using ProcedureRules.Language;

namespace ProcedureRules.Refrigerants;

/// <summary>The functions about refrigerants, vacuum and the air around that packs can call.</summary>
public static class RefrigerantFunctions
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FunctionDefinition> All { get; } = [];
}
