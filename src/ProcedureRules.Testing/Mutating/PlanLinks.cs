using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Testing.Approving;

namespace ProcedureRules.Testing.Mutating;

/// <summary>What of a plan tells whether a change can show in it: which steps it has, which of them come right after which, and what it asks.</summary>
internal sealed class PlanLinks
{
    private readonly Plan _plan;
    private readonly HashSet<Step> _steps;
    private readonly HashSet<string> _asked;
    private readonly IReadOnlyDictionary<string, IReadOnlyList<string>> _rightAfter;

    public PlanLinks(Plan plan) =>
        (_plan, _steps, _asked, _rightAfter) = (plan, [.. plan.Steps.Select(step => step.Step)], [.. plan.Questions.Select(question => question.Id)], NearestSteps.Of(plan));

    /// <summary>Whether the plan has any steps.</summary>
    public bool HasSteps => _steps.Count > 0;

    /// <summary>Whether the plan has a step.</summary>
    public bool Has(Step step) => _steps.Contains(step);

    /// <summary>Whether a fact, a relation or a part is asked for, by its path.</summary>
    public bool Asks(string path) => _asked.Contains(path);

    /// <summary>Whether a step comes right after another, and not only after a third that does.</summary>
    public bool IsRightAfter(Step first, Step second) => IndicesOf(second).Any(at => _rightAfter[_plan.Steps[at].Id] is var ids && IndicesOf(first).Any(other => ids.Contains(_plan.Steps[other].Id)));

    /// <summary>Whether a step comes right after the one that last changed a state.</summary>
    public bool IsRightAfterChange(GroundState state, Step step) => IndicesOf(step).Any(at => LastChange(state, at) is { } change && _rightAfter[_plan.Steps[at].Id].Contains(change.Id));

    /// <summary>Whether a step of the plan changes a state.</summary>
    public bool Changes(Part part, Aspect aspect) => _plan.Steps.Any(step => Changes(step, part, aspect));

    private static bool Changes(PlanStep step, Part part, Aspect aspect) => step.Changes.Any(change => change.Before.Part == part && ReferenceEquals(change.Before.Aspect, aspect));

    private IEnumerable<int> IndicesOf(Step step) => Has(step) ? Enumerable.Range(0, _plan.Steps.Count).Where(at => _plan.Steps[at].Step.Equals(step)) : [];

    private PlanStep? LastChange(GroundState state, int before)
    {
        for (var at = before - 1; at >= 0; at--)
            if (Changes(_plan.Steps[at], state.Part, state.Aspect)) return _plan.Steps[at];
        return null;
    }
}
