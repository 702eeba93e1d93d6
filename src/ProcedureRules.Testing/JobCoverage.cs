using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What a job came to over all cases.</summary>
/// <param name="Pack">Its pack.</param>
/// <param name="Job">Its name.</param>
/// <param name="Span">Where it is defined.</param>
/// <param name="Asked">In how many cases it was asked for.</param>
/// <param name="Finished">In how many of them a plan led to its end without a stop.</param>
public sealed record JobCoverage(string Pack, string Job, SourceSpan Span, int Asked, int Finished);
