using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Planning;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>What is asked next: the first question of which an answer changes the plan.</summary>
/// <param name="Next">The question with its answers planned; null where none was found.</param>
/// <param name="Unproven">
/// Questions of which no answer was found to change anything, and which may all the same: beside others that were not tried within the bound, or
/// at figures that were not tried.
/// </param>
public sealed record QuestionSearch(QuestionOutlook? Next, IReadOnlyList<PlanQuestion> Unproven)
{
    private const int MostPlanned = 60;

    /// <summary>Looks for the next question: each by itself, then two together of which neither matters alone.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="beliefs">What is believed before any way was chosen.</param>
    /// <param name="isPassed">Whether a question was asked before and nobody knew.</param>
    /// <param name="cancellation">Ends planning early.</param>
    public static QuestionSearch Of(Plan plan, BeliefState beliefs, Func<PlanQuestion, bool> isPassed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(beliefs);
        var alone = new List<QuestionOutlook>();
        foreach (var outlook in QuestionOutlook.Rank(plan, beliefs).Where(outlook => !isPassed(outlook.Question)))
        {
            var planned = outlook.WithAnswers(plan, beliefs, cancellation);
            if (planned.Matters) return new QuestionSearch(planned, []);
            alone.Add(planned);
        }

        return Pairs(plan, beliefs, alone, cancellation);
    }

    private static QuestionSearch Pairs(Plan plan, BeliefState beliefs, List<QuestionOutlook> alone, CancellationToken cancellation)
    {
        var unproven = alone.Select(outlook => outlook.Question).Where(question => Outcomes.HasNoThresholds(beliefs, question.About)).ToHashSet();
        var together = new Openness(beliefs).ReadTogether();
        var planned = 0;
        for (var i = 0; i < alone.Count; i++)
            for (var j = i + 1; j < alone.Count; j++)
            {
                var (one, other) = (alone[i], alone[j]);
                if (!together.Any(keys => keys.Contains(one.Question.About) && keys.Contains(other.Question.About))) continue;
                foreach (var first in Outcomes.Sampled(beliefs, one.Question.About))
                    foreach (var second in Outcomes.Sampled(beliefs, other.Question.About))
                    {
                        if (++planned > MostPlanned)
                        {
                            unproven.Add(one.Question);
                            unproven.Add(other.Question);
                            continue;
                        }

                        var after = Planner.Plan(beliefs.With([first.Answer, second.Answer]), cancellation).Plan;
                        if (new AnswerOutlook(first.Text, after is null ? null : PlanDifference.Between(plan, after)).Matters)
                            return new QuestionSearch(one with { Beside = other.Question }, []);
                    }
            }

        return new QuestionSearch(null, [.. alone.Select(outlook => outlook.Question).Where(unproven.Contains)]);
    }
}
