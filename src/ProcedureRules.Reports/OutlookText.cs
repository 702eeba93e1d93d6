using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What hangs on a question, in words.</summary>
internal static class OutlookText
{
    private const int MostSteps = 3;

    /// <summary>What finding it out takes, and where its answers are planned how much labour hangs on it; nothing where there is nothing to say.</summary>
    public static IEnumerable<string> Effort(QuestionOutlook outlook, UnitSystem units)
    {
        var parts = new List<string>();
        if (outlook.Finding.High > 0) parts.Add($"{outlook.Finding.ToDisplay(units)} of work");
        parts.AddRange(outlook.Tools.Select(tool => tool.In(units)));
        if (parts.Count > 0) yield return $"Takes: {string.Join("; ", parts)}";
        if (outlook.Answers.Count > 0 && outlook.Swing.High >= 60) yield return $"Labour hangs on it: about {Quantity.Point(60 * Math.Round(outlook.Swing.High / 60), Dimension.Duration).ToDisplay(units)}";
    }

    /// <summary>What each answer would make of the plan; those that come to the same stand together.</summary>
    public static IEnumerable<string> Answers(QuestionOutlook outlook, UnitSystem units)
    {
        var outcomes = outlook.Answers.GroupBy(answer => Outcome(answer, units)).ToList();
        foreach (var outcome in outcomes)
        {
            var lead = outcomes.Count == 1 ? "Whatever it is" : $"If {string.Join(", or ", outcome.Select(answer => answer.Answer.In(units)))}";
            yield return $"{lead}: {outcome.Key}";
        }

        if (outlook.Always.Count > 0) yield return $"Whatever it is, this is done: {Steps(outlook.Always, units)}";
        if (outlook.Beside is { } other) yield return $"It matters together with this: {other.Text.In(units)}";
    }

    /// <summary>What one answer would make of the plan.</summary>
    public static string Outcome(AnswerOutlook answer, UnitSystem units)
    {
        if (answer.Difference is not { } difference) return "there is no plan";
        if (difference.After.IsStopped && !difference.Before.IsStopped) return "the job stops";
        var parts = new List<string>();
        if (difference.StepsIn.Count > 0) parts.Add($"comes in: {Steps(difference.StepsIn, units)}");
        if (difference.StepsOut.Count > 0) parts.Add($"goes: {Steps(difference.StepsOut, units)}");
        if (difference.StepsMoved.Count > 0) parts.Add("the order changes");
        if (difference.Before.Labour != difference.After.Labour) parts.Add($"labour {difference.After.Labour.ToDisplay(units)}");
        return parts.Count > 0 ? string.Join("; ", parts) : answer.Matters ? "the same steps, other notes and figures" : "nothing changes";
    }

    private static string Steps(IReadOnlyList<PlanStep> steps, UnitSystem units) =>
        string.Join(", ", steps.Take(MostSteps).Select(step => $"\"{step.Text.In(units)}\"")) + (steps.Count > MostSteps ? $" and {steps.Count - MostSteps} more" : "");
}
