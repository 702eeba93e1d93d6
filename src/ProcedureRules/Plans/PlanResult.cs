using ProcedureRules.Diagnostics;

namespace ProcedureRules.Plans;

/// <summary>
/// What planning came to. Three cases: a plan with steps; a plan that is stopped (<see cref="Plans.Plan.IsStopped"/>), whose stops say why the job cannot go on (its steps
/// are empty, since none is known to be safe, and its questions say what could end the stop); or no plan and the mistakes in the packs or
/// the situation that prevent one.
/// </summary>
/// <param name="Plan">The plan; null where mistakes prevent one.</param>
/// <param name="Diagnostics">Mistakes: a ring of order conditions, steps that cannot be put in order, a bound reached.</param>
public sealed record PlanResult(Plan? Plan, IReadOnlyList<Diagnostic> Diagnostics);
