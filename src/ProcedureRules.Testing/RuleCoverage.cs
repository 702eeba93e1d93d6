using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What a rule, or a row of a table, came to over all cases, counted by cases.</summary>
/// <param name="Pack">Its pack.</param>
/// <param name="Rule">Its name.</param>
/// <param name="Span">Where it is written.</param>
/// <param name="Matched">In how many cases something on the vehicle fitted what it binds.</param>
/// <param name="Fired">In how many cases it concluded something, surely or possibly.</param>
/// <param name="Sure">In how many cases it surely concluded something.</param>
/// <param name="Conditions">Its conditions that test.</param>
/// <param name="Conclusions">What it concludes.</param>
public sealed record RuleCoverage(
    string Pack, string Rule, SourceSpan Span, int Matched, int Fired, int Sure, IReadOnlyList<ConditionCoverage> Conditions, IReadOnlyList<ConclusionCoverage> Conclusions);
