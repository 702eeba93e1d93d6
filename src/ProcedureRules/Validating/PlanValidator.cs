using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Plans;

namespace ProcedureRules.Validating;

/// <summary>
/// Checks a draft and makes the plan of it: the only place where a <see cref="Plan"/> comes from. It replays the steps under the beliefs, with
/// everything possible in, and under each single answer to each open question, with what is not needed there left out.
/// </summary>
internal static class PlanValidator
{
    /// <summary>The plan, or null and what is wrong with the draft.</summary>
    public static (Plan? Plan, IReadOnlyList<Violation> Violations) Validate(PlanDraft draft)
    {
        var violations = Violations(draft);
        return violations.Count > 0 ? (null, violations) : (Make(draft), []);
    }

    /// <summary>What is wrong with a draft. One that surely stops has no steps to check.</summary>
    public static IReadOnlyList<Violation> Violations(PlanDraft draft)
    {
        if (draft.Stops.Count > 0 && draft.Steps.Count == 0) return [];
        if (draft.Stops.Any(stop => stop.IsSure)) return [new Violation(null, "a stopped job has steps")];
        var laws = new PlanLaws(draft.Beliefs, [.. draft.Steps.Select(step => step.Step)]);
        var violations = new List<Violation>(Replay.Of(draft.Beliefs, laws, draft.Steps));
        violations.AddRange(Completeness.Of(draft, laws));
        if (violations.Count > 0) return violations;
        foreach (var question in draft.Questions)
            foreach (var outcome in Outcomes.Of(draft.Beliefs, question.About))
                violations.AddRange(OfOutcome(draft, laws, question, draft.Beliefs.With([outcome])));
        return violations;
    }

    private static IEnumerable<Violation> OfOutcome(PlanDraft draft, PlanLaws laws, PlanQuestion question, BeliefState beliefs)
    {
        if (laws.Stand(beliefs, draft.Steps)) return [];
        var known = Known(draft, question);
        var steps = known.Where(step => IsDoneThere(draft.Beliefs, beliefs, step)).ToList();
        return Replay.OfOutcome(beliefs, laws.Under(beliefs, [.. steps.Select(step => step.Step)]), steps, isWhole: known.Count == draft.Steps.Count)
            .Select(violation => violation with { Text = $"{violation.Text} (if {question.Id} turns out otherwise)", Question = question.Id });
    }

    // Where the plan holds until a question is answered and it is planned again, it says nothing of the steps behind.
    private static List<PlanStep> Known(PlanDraft draft, PlanQuestion question) =>
        [.. draft.Steps.TakeWhile(step => !step.Holds.Any(hold => hold.PlansAgain && hold.Questions.Contains(question.Id)))];

    // A check that nothing but its question asks for is done in every case.
    private static bool IsDoneThere(BeliefState planned, BeliefState there, PlanStep step)
    {
        var atom = new Atom.Occurs(step.Step);
        return there.Available(atom) >= Assurance.Provisional || planned.Available(atom) == Assurance.No;
    }

    private static Plan Make(PlanDraft draft) => new()
    {
        Situation = draft.Situation,
        Beliefs = draft.Beliefs,
        Steps = draft.Steps,
        Questions = draft.Questions,
        Cautions = draft.Cautions,
        Findings = draft.Findings,
        TellingChecks = draft.TellingChecks,
        Conflicts = draft.Beliefs.Conflicts,
        Stops = draft.Stops,
        Holds = draft.Holds,
        Choices = draft.Choices,
        ChoicesBound = draft.ChoicesBound,
        Tools = draft.Tools,
        Supplies = draft.Supplies,
        Offers = draft.Offers,
        Assumptions = draft.Assumptions,
        Labour = draft.Labour,
        Rejected = draft.Rejected,
    };
}
