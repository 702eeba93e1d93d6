using ProcedureRules.Diagnostics;

namespace ProcedureRules;

/// <summary>What came of opening a work order.</summary>
/// <param name="Session">The session; null where the order or its sheet has an error.</param>
/// <param name="Diagnostics">Every mistake of the order, the sheet and its archetype.</param>
public sealed record OpenResult(ProcedureSession? Session, IReadOnlyList<Diagnostic> Diagnostics);
