using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What an operation came to over all cases.</summary>
/// <param name="Pack">Its pack.</param>
/// <param name="Operation">Its name.</param>
/// <param name="Span">Where it is defined.</param>
/// <param name="Planned">In how many cases a step of it stood in a plan.</param>
public sealed record OperationCoverage(string Pack, string Operation, SourceSpan Span, int Planned);
