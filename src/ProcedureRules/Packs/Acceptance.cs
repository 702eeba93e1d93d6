using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>A finding of the lint that a declaration accepts.</summary>
/// <param name="Of">The name of the declaration.</param>
/// <param name="Code">The code of the finding.</param>
/// <param name="Span">Where the code is written.</param>
/// <param name="Reason">Why it is meant.</param>
internal sealed record Acceptance(SourceSpan Of, string Code, SourceSpan Span, string Reason);
