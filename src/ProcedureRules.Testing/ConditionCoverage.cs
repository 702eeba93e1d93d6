using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What a condition of a rule came to over all cases, counted by cases.</summary>
/// <param name="Text">The condition, as it is written.</param>
/// <param name="Span">Where it is written.</param>
/// <param name="Yes">In how many cases it held.</param>
/// <param name="No">In how many cases it did not.</param>
/// <param name="Unknown">In how many cases it was not known.</param>
public sealed record ConditionCoverage(string Text, SourceSpan Span, int Yes, int No, int Unknown)
{
    /// <summary>Whether it was seen both to hold and not to.</summary>
    public bool IsSettledBothWays => Yes > 0 && No > 0;
}
