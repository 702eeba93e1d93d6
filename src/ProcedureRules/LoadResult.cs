using ProcedureRules.Diagnostics;

namespace ProcedureRules;

/// <summary>What came of loading packs.</summary>
/// <param name="Engine">The engine; null where a pack has an error.</param>
/// <param name="Diagnostics">Every mistake of every file, in the order of files and places.</param>
public sealed record LoadResult(ProcedureEngine? Engine, IReadOnlyList<Diagnostic> Diagnostics);
