using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>
/// A validated step plan: from the states now to the end of the jobs. Only the validator makes one, so that a plan that fails is never
/// returned as a plan.
/// </summary>
public sealed class Plan
{
    internal Plan() { }

    /// <summary>The situation it is for.</summary>
    public required Situation Situation { get; init; }

    /// <summary>The steps in order.</summary>
    public required IReadOnlyList<PlanStep> Steps { get; init; }

    /// <summary>What is not known and matters, the first to ask first.</summary>
    public required IReadOnlyList<PlanQuestion> Questions { get; init; }

    /// <summary>Cautions for the whole job.</summary>
    public required IReadOnlyList<PlanCaution> Cautions { get; init; }

    /// <summary>What the findings say of causes.</summary>
    public required IReadOnlyList<PlanFinding> Findings { get; init; }

    /// <summary>What would tell the causes apart that are still possible, the least work first.</summary>
    public required IReadOnlyList<PlanTellingCheck> TellingChecks { get; init; }

    /// <summary>Statements that contradict each other.</summary>
    public required IReadOnlyList<Conflict> Conflicts { get; init; }

    /// <summary>Why the job cannot go on, or perhaps cannot; a plan with steps holds before what a possible stop is about.</summary>
    public required IReadOnlyList<PlanStop> Stops { get; init; }

    /// <summary>Whether the job stops: there are no steps, and <see cref="Stops"/> say why.</summary>
    public bool IsStopped => Stops.Count > 0 && Steps.Count == 0;

    /// <summary>What the plan waits for and could not place at a step.</summary>
    public required IReadOnlyList<PlanHold> Holds { get; init; }

    /// <summary>Choices made.</summary>
    public required IReadOnlyList<PlanChoice> Choices { get; init; }

    /// <summary>
    /// Where the search for the best ways ended early: no ways take less likely labour than this. Null: the ways chosen are the best.
    /// </summary>
    public required Quantity? ChoicesBound { get; init; }

    /// <summary>Tools.</summary>
    public required IReadOnlyList<PlanItem> Tools { get; init; }

    /// <summary>Supplies.</summary>
    public required IReadOnlyList<PlanItem> Supplies { get; init; }

    /// <summary>Optional work while it is open.</summary>
    public required IReadOnlyList<PlanItem> Offers { get; init; }

    /// <summary>Assumed facts that the plan rests on.</summary>
    public required IReadOnlyList<PlanItem> Assumptions { get; init; }

    /// <summary>Labour from the least (sure steps, at their least) to the most (possible steps too, at their most).</summary>
    public required Quantity Labour { get; init; }

    /// <summary>What the plan believed.</summary>
    public required BeliefState Beliefs { get; init; }

    /// <summary>How often steps were looked at before, of other ways or with checks between them, that made no plan: what it took to find this one.</summary>
    internal int Rejected { get; init; }
}
