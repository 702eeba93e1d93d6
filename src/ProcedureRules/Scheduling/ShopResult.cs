using ProcedureRules.Diagnostics;

namespace ProcedureRules.Scheduling;

/// <summary>What came of reading a shop file.</summary>
/// <param name="Shop">The shop; null where the file has an error.</param>
/// <param name="Diagnostics">Every mistake of the file.</param>
public sealed record ShopResult(Workshop? Shop, IReadOnlyList<Diagnostic> Diagnostics);
