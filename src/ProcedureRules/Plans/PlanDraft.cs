using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>A plan that nobody has checked yet.</summary>
internal sealed record PlanDraft
{
    public required Situation Situation { get; init; }
    public required BeliefState Beliefs { get; init; }
    public IReadOnlyList<PlanStep> Steps { get; init; } = [];
    public IReadOnlyList<PlanQuestion> Questions { get; init; } = [];
    public IReadOnlyList<PlanCaution> Cautions { get; init; } = [];
    public IReadOnlyList<PlanFinding> Findings { get; init; } = [];
    public IReadOnlyList<PlanTellingCheck> TellingChecks { get; init; } = [];
    public IReadOnlyList<PlanStop> Stops { get; init; } = [];
    public IReadOnlyList<PlanHold> Holds { get; init; } = [];
    public IReadOnlyList<PlanChoice> Choices { get; init; } = [];
    public Quantity? ChoicesBound { get; init; }
    public IReadOnlyList<PlanItem> Tools { get; init; } = [];
    public IReadOnlyList<PlanItem> Supplies { get; init; } = [];
    public IReadOnlyList<PlanItem> Offers { get; init; } = [];
    public IReadOnlyList<PlanItem> Assumptions { get; init; } = [];
    public Quantity Labour { get; init; } = Quantity.Point(0, Dimension.Duration);

    public int Rejected { get; init; }
}
