using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What one case came to.</summary>
/// <param name="Case">The case.</param>
/// <param name="Expectations">Its expectations in the order of the turns.</param>
/// <param name="Diagnostics">What kept it from being planned to the end, and warnings.</param>
/// <param name="Time">How long it took.</param>
public sealed record CaseResult(ScenarioCase Case, IReadOnlyList<ExpectationResult> Expectations, IReadOnlyList<Diagnostic> Diagnostics, TimeSpan Time)
{
    /// <summary>The expectations that are not met.</summary>
    public IEnumerable<ExpectationResult> Failures => Expectations.Where(expectation => !expectation.IsMet);

    /// <summary>Whether it was planned to the end and all expectations are met.</summary>
    public bool Passed => Expectations.All(expectation => expectation.IsMet) && !Diagnostics.Any(mistake => mistake.Severity == Severity.Error);
}
