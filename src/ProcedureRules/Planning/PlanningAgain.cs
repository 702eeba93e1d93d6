using ProcedureRules.Beliefs;
using ProcedureRules.Plans;
using ProcedureRules.Validating;

namespace ProcedureRules.Planning;

/// <summary>
/// Where leaving out what one answer makes needless does not give a plan for that answer, the plan holds at the step where that shows: the
/// question is answered first, and the rest is planned again.
/// </summary>
internal static class PlanningAgain
{
    /// <summary>The draft with holds for what is wrong under other answers; null where that is not all that is wrong, or where it holds already.</summary>
    public static PlanDraft? HoldAt(PlanDraft draft, IReadOnlyList<Violation> violations)
    {
        if (violations.Count == 0 || violations.Any(violation => violation.Question is null)) return null;
        var steps = draft.Steps.ToList();
        var reasons = new Reasons(draft.Beliefs);
        var hasChanged = false;
        foreach (var group in violations.GroupBy(violation => violation.Question!))
        {
            var question = draft.Questions.First(question => question.Id == group.Key);
            var at = group.Min(violation => IndexOf(steps, violation));
            if (at < 0 || steps[at].Holds.Any(hold => hold.PlansAgain && hold.Questions.Contains(question.Id))) continue;
            if (Write(draft.Beliefs, question, reasons) is not { } hold) return null;
            steps[at] = steps[at].With(hold);
            hasChanged = true;
        }

        return hasChanged ? draft with { Steps = steps } : null;
    }

    // What shows only at the end began where the first step hangs on what is open.
    private static int IndexOf(List<PlanStep> steps, Violation violation) => violation.Step is { } id
        ? steps.FindIndex(step => step.Id == id)
        : Math.Max(0, steps.FindIndex(step => step.Provisional.Count > 0));

    private static PlanHold? Write(BeliefState beliefs, PlanQuestion question, Reasons reasons)
    {
        var reader = beliefs.Network.Readers(question.About) is [var first, ..] ? first : null;
        var text = new Wording(units => $"{question.Text.In(units)} From here on the plan hangs on the answer: find it out, then plan again.");
        return reader is null ? null : new PlanHold(text, [question.Id], reasons.Of(reader), PlansAgain: true);
    }
}
