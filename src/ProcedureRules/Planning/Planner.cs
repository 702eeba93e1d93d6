using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Plans;

namespace ProcedureRules.Planning;

/// <summary>Plans a job: chooses between the ways, puts the steps in order, attaches what belongs to them, and has the plan validated.</summary>
/// <remarks>Holds no state; safe on many threads.</remarks>
public static class Planner
{
    /// <summary>Plans under some beliefs, within the usual bounds.</summary>
    /// <param name="beliefs">What is believed; choices taken in it stay taken.</param>
    /// <param name="cancellation">Ends planning early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static PlanResult Plan(BeliefState beliefs, CancellationToken cancellation = default) => Plan(beliefs, PlannerOptions.Default, cancellation);

    /// <summary>Plans under some beliefs.</summary>
    /// <param name="beliefs">What is believed; choices taken in it stay taken.</param>
    /// <param name="options">Bounds.</param>
    /// <param name="cancellation">Ends planning early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static PlanResult Plan(BeliefState beliefs, PlannerOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(beliefs);
        ArgumentNullException.ThrowIfNull(options);
        var book = ChoiceBook.Of(beliefs.Network);
        var attempt = new Attempt(book, options, cancellation);
        if (attempt.Plan(beliefs) is { } plan) return new PlanResult(plan, []);
        // Where all that is in the way is only possible, the plan holds before it and tells the rest.
        if (attempt.Failures.MayGoOn && new Attempt(book, options, cancellation, attempt.Failures).Plan(beliefs.Tentatively(true)) is { } tentative) return new PlanResult(tentative, []);
        return attempt.Fail();
    }
}
