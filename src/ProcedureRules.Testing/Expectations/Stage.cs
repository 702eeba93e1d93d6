using ProcedureRules.Facts;

namespace ProcedureRules.Testing.Expectations;

/// <summary>A moment of a case at which it is planned.</summary>
/// <param name="Situation">What is stated then.</param>
/// <param name="Outcome">What it came to.</param>
/// <param name="Judging">What is expected of it.</param>
internal sealed record Stage(Situation Situation, Outcome Outcome, IReadOnlyList<Expectation> Judging);
