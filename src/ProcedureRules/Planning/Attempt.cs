using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Diagnostics;
using ProcedureRules.Plans;
using ProcedureRules.Validating;

namespace ProcedureRules.Planning;

/// <summary>Tries one set of choices after the other, the best first, until one makes a plan.</summary>
/// <param name="book">The choices there are.</param>
/// <param name="options">Bounds.</param>
/// <param name="cancellation">Ends planning early.</param>
/// <param name="earlier">What an attempt before this one ran into; null where this is the first.</param>
internal sealed class Attempt(ChoiceBook book, PlannerOptions options, CancellationToken cancellation, Failures? earlier = null)
{
    // How many times more sets of choices are tried where it is proved of each, which is quick, that it has no order.
    private const int MostProved = 8;

    /// <summary>What kept the sets of choices tried from becoming plans.</summary>
    public Failures Failures { get; } = earlier?.Again() ?? new Failures();

    /// <summary>The plan of the best set of choices that makes one; null where none does.</summary>
    public Plan? Plan(BeliefState beliefs)
    {
        var planner = new DecisionPlanner(book, options, Failures, cancellation);
        var tried = 0;
        foreach (var decision in new Chooser(book, options, cancellation).From(beliefs).Take(options.MostHypotheses))
        {
            if (decision.Faults.Count > 0)
            {
                Failures.Stop(decision, decision.Faults);
                continue;
            }
            if (planner.Plan(decision) is { } plan) return plan;
            if (Failures.InVain >= options.MostDecisions || ++tried >= MostProved * options.MostDecisions) break;
        }

        return null;
    }

    /// <summary>What came of it where there is no plan: why the job stops, or what is wrong.</summary>
    public PlanResult Fail()
    {
        if (!options.IsBrief && Failures.Unordered is { } decision && new Division(decision, Failures, book, options, cancellation).Find() is { } divided) return Stopped(decision, [divided]);
        // Ways that could not be put in order say more of what is wrong than ways that are forbidden.
        if (Failures.Diagnostics.Count > 0) return new PlanResult(null, [Failures.Diagnostics[0]]);
        return Failures.Stopped is { } stopped ? Stopped(stopped, Failures.WhatStops()) : new PlanResult(null, [Messages.NoDecision()]);
    }

    private PlanResult Stopped(Decision decision, IReadOnlyList<Fault> faults) =>
        new(PlanValidator.Validate(new Drafter(decision, book, new Questioner(decision.Beliefs, book), options).Stopped(faults) with { Rejected = Failures.Rejected }).Plan, []);
}
