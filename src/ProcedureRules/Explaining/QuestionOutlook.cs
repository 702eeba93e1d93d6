using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Inference;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Explaining;

/// <summary>A question of a plan with what hangs on it, and where they were planned with what each of its answers would make of the plan.</summary>
/// <param name="Question">The question.</param>
/// <param name="Swing">
/// How far its answers move the likely labour apart; where they were not planned, of the work required before ways are chosen anew, which is good
/// for ranking only.
/// </param>
/// <param name="Finding">The labour of finding it out; nothing for what is only looked at or asked.</param>
/// <param name="Tools">The tools of finding it out.</param>
public sealed record QuestionOutlook(PlanQuestion Question, Quantity Swing, Quantity Finding, IReadOnlyList<Wording> Tools)
{
    /// <summary>Its answers; empty where they were not planned.</summary>
    public IReadOnlyList<AnswerOutlook> Answers { get; private init; } = [];

    /// <summary>The steps that are only possible in the plan and are done whatever the answer.</summary>
    public IReadOnlyList<PlanStep> Always { get; private init; } = [];

    /// <summary>The question beside which alone it matters, where it does not matter by itself.</summary>
    public PlanQuestion? Beside { get; init; }

    /// <summary>Whether any planned answer changes more than that the question is answered.</summary>
    public bool Matters => Answers.Any(answer => answer.Matters);

    /// <summary>
    /// The questions of a plan that can be answered now: those first that need not wait for others; then what can hurt, then what moves the most
    /// labour, then what is found out soonest. None of their answers is planned yet.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="beliefs">What is believed before any way was chosen.</param>
    public static IReadOnlyList<QuestionOutlook> Rank(Plan plan, BeliefState beliefs)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(beliefs);
        var work = new FindingWork(beliefs);
        return
        [
            .. plan.Questions.Where(question => question.AtStep is null || question.Doubted is not null)
                .Select(question => new QuestionOutlook(question, SwingOf(question, beliefs), work.Of(question.About).Labour, work.Tools(question.About)))
                .OrderBy(outlook => outlook.Question.After.Count > 0)
                .ThenByDescending(outlook => outlook.Question.IsSafety)
                .ThenByDescending(outlook => Math.Round(outlook.Swing.High / 60))
                .ThenBy(outlook => Math.Round(outlook.Finding.High / 60)),
        ];
    }

    /// <summary>The same with each of its answers planned.</summary>
    /// <param name="plan">The plan that asks it.</param>
    /// <param name="beliefs">What is believed before any way was chosen.</param>
    /// <param name="cancellation">Ends planning early.</param>
    public QuestionOutlook WithAnswers(Plan plan, BeliefState beliefs, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(beliefs);
        List<AnswerOutlook> answers = [.. Outcomes.Sampled(beliefs, Question.About).Select(outcome => new AnswerOutlook(
            outcome.Text, Planner.Plan(beliefs.With([outcome.Answer]), cancellation).Plan is { } after ? PlanDifference.Between(plan, after) : null))];
        var labours = answers.Where(answer => answer.Difference?.After.IsStopped == false).Select(answer => answer.Difference!.After.Labour.Midpoint ?? 0).ToList();
        return this with { Answers = answers, Swing = Apart(labours), Always = DoneAnyway(plan) };
    }

    // What is sure in every case that one question leaves open is sure, though no single rule says so.
    private List<PlanStep> DoneAnyway(Plan plan)
    {
        var open = plan.Steps.Where(step => step.Provisional.Count > 0).ToList();
        var answers = open.Count == 0 ? [] : Outcomes.All(plan.Beliefs, Question.About);
        if (answers.Count < 2) return [];
        foreach (var answer in answers)
        {
            var supposed = plan.Beliefs.With([answer]);
            open.RemoveAll(step => supposed.Required(new Atom.Occurs(step.Step)) < Assurance.Protective);
            if (open.Count == 0) break;
        }

        return open;
    }

    // The labour of what is required under each answer, before any plan is made.
    private static Quantity SwingOf(PlanQuestion question, BeliefState beliefs)
    {
        var labours = Outcomes.Sampled(beliefs, question.About).Select(outcome => Cost.Under(beliefs.With([outcome.Answer])).Likely).ToList();
        return Apart(labours);
    }

    private static Quantity Apart(List<double> labours) => Quantity.Point(labours.Count == 0 ? 0 : labours.Max() - labours.Min(), Dimension.Duration);
}
