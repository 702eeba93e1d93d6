using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What a fact came to over all cases.</summary>
/// <param name="Pack">Its pack.</param>
/// <param name="Fact">Its kind and name.</param>
/// <param name="Span">Where it is defined.</param>
/// <param name="Known">In how many cases something was known of it: stated, measured, assumed or derived.</param>
/// <param name="Asked">In how many cases it was asked for.</param>
public sealed record FactCoverage(string Pack, string Fact, SourceSpan Span, int Known, int Asked)
{
    /// <summary>Whether a case knew it or asked for it.</summary>
    public bool IsMet => Known > 0 || Asked > 0;
}
