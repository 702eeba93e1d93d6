using ProcedureRules.Beliefs;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// Plans a moment with a rule changed. Where its own plan comes out of a short search and its steps are expected, a change that leaves no plan in
/// a search as short is noticed: the long one for what divides the steps, or for an order that takes ten times the tries, need not be made.
/// </summary>
internal sealed class StagePlanner(Stage stage)
{
    private static readonly PlannerOptions Short = PlannerOptions.Default with { MostMoments = 2000, MostDecisions = 4, IsBrief = true };

    private readonly bool _stepsAreExpected = stage.Approved is null ? stage.Judging.Any(expected => expected is StepExpected { IsDue: true }) : stage.Outcome.Plan.Steps.Count > 0;
    private readonly Lazy<bool> _isShort = new(() => HasSteps(Planner.Plan(stage.Outcome.Beliefs, Short).Plan));

    /// <summary>The plan; null where there is none, or none with steps and it is known that this is noticed.</summary>
    public Plan? Plan(BeliefState beliefs, CancellationToken cancellation)
    {
        if (!_stepsAreExpected) return Planner.Plan(beliefs, cancellation).Plan;
        var plan = Planner.Plan(beliefs, Short, cancellation).Plan;
        if (HasSteps(plan)) return plan;
        return _isShort.Value ? null : Planner.Plan(beliefs, cancellation).Plan;
    }

    private static bool HasSteps(Plan? plan) => plan is { Steps.Count: > 0 };
}
