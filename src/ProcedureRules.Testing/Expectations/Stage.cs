using ProcedureRules.Facts;
using ProcedureRules.Testing.Approving;

namespace ProcedureRules.Testing.Expectations;

/// <summary>A moment of a case at which it is planned.</summary>
/// <param name="Situation">What is stated then.</param>
/// <param name="Outcome">What it came to.</param>
/// <param name="Judging">What is expected of it.</param>
/// <param name="Turn">The turn that ends there; null where it is a moment within one.</param>
internal sealed record Stage(Situation Situation, Outcome Outcome, IReadOnlyList<Expectation> Judging, int? Turn)
{
    /// <summary>The plan that is approved for it; null where it is held to none.</summary>
    public ApprovedSection? Approved { get; init; }
}
