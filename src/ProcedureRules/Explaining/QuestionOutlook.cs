using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Planning;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>A question with what each of its answers would make of the plan.</summary>
/// <param name="Question">The question.</param>
/// <param name="Answers">Its answers.</param>
public sealed record QuestionOutlook(PlanQuestion Question, IReadOnlyList<AnswerOutlook> Answers)
{
    /// <summary>Whether any answer changes more than that the question is answered.</summary>
    public bool Matters => Answers.Any(answer => answer.Difference is not { } difference
        || difference.StepsIn.Count + difference.StepsOut.Count + difference.StepsMoved.Count > 0
        || difference.Before.Labour != difference.After.Labour
        || difference.In.Concat(difference.Out).Any(item => item.Sort != PlanItemSort.Question));

    /// <summary>The questions of a plan that can be answered now: what can hurt first, then what moves the most labour, then what is found out soonest.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="beliefs">What is believed before any way was chosen.</param>
    public static IReadOnlyList<PlanQuestion> Rank(Plan plan, BeliefState beliefs)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(beliefs);
        var work = new FindingWork(beliefs);
        return
        [
            .. plan.Questions.Where(question => question.AtStep is null)
                .OrderBy(question => question.IsSafety ? 0 : 1)
                .ThenByDescending(question => Math.Round(Swing(question, beliefs) / 60))
                .ThenBy(question => Math.Round(work.Of(question.About).Labour.High / 60)),
        ];
    }

    /// <summary>Plans each answer to a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="plan">The plan that asks it.</param>
    /// <param name="beliefs">What is believed before any way was chosen.</param>
    /// <param name="cancellation">Ends planning early.</param>
    public static QuestionOutlook Of(PlanQuestion question, Plan plan, BeliefState beliefs, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(beliefs);
        return new QuestionOutlook(question,
        [
            .. Outcomes.Sampled(beliefs, question.About).Select(outcome => new AnswerOutlook(
                outcome.Text,
                Planner.Plan(beliefs.With([outcome.Answer]), cancellation).Plan is { } after ? PlanDifference.Between(plan, after) : null)),
        ]);
    }

    // The labour of what is required under each answer, before any plan is made.
    private static double Swing(PlanQuestion question, BeliefState beliefs)
    {
        var labours = Outcomes.Sampled(beliefs, question.About).Select(outcome => Cost.Under(beliefs.With([outcome.Answer])).Likely).ToList();
        return labours.Count == 0 ? 0 : labours.Max() - labours.Min();
    }
}
