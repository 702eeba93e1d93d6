using ProcedureRules.Explaining;
using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>A question as it is put in an interview: with how to find out, what can be answered, and what each answer would make of the plan.</summary>
public static class QuestionText
{
    private const int MostSteps = 3;

    /// <summary>The lines of the question.</summary>
    /// <param name="outlook">The question and its outlook.</param>
    /// <param name="number">Its number in the interview.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(QuestionOutlook outlook, int number, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        var writer = new ReportWriter(Math.Max(40, width));
        var question = outlook.Question;
        writer.Blank();
        writer.Write($"{number,3}. ", question.Text.In(units), Tone.Question);
        if (question.Doubted is { } doubted) writer.Write("     ", $"Stated and doubted: {doubted.In(units)}");
        if (question.Assumed is { } assumed) writer.Write("     ", $"Assumed meanwhile: {assumed.In(units)}");
        if (question.How is { } how) writer.Write("     ", $"How: {how.In(units)}");
        writer.Write("     ", $"Answer: {Answers(question.About, units)}, or nothing for \"I don't know\"", Tone.Quiet);
        var outcomes = outlook.Answers.GroupBy(answer => Outcome(answer, units)).ToList();
        foreach (var outcome in outcomes)
        {
            var lead = outcomes.Count == 1 ? "Whatever it is" : $"If {string.Join(", or ", outcome.Select(answer => answer.Answer.In(units)))}";
            writer.Write("     ", $"{lead}: {outcome.Key}", Tone.Quiet);
        }

        return writer.Lines;
    }

    /// <summary>The end of an interview: what stays open, and what the plan comes to.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="open">The ids of what nobody knew.</param>
    /// <param name="isSettled">Whether nothing else can change the plan.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Closing(Plans.Plan plan, IReadOnlyCollection<string> open, bool isSettled, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(open);
        var writer = new ReportWriter(Math.Max(40, width));
        if (isSettled) writer.Write("", open.Count == 0 ? "Nothing left can change the plan." : "Nothing else can change the plan.");
        if (open.Count > 0) writer.Write("", $"Still open: {string.Join(", ", open)}.");
        writer.Write("", $"The plan has {plan.Steps.Count} steps, {plan.Labour.ToDisplay(units)} of labour.");
        return [new ReportLine("", Tone.Plain), .. writer.Lines];
    }

    private static string Answers(Reading about, UnitSystem units) => about switch
    {
        Reading.OfFact { Key.Fact: { Type.IsQuantity: true } fact } => fact.Plausible is { } range
            ? $"a figure with its unit, within {range.ToDisplay(units)}"
            : "a figure with its unit",
        Reading.OfFact { Key.Fact.Type: { IsWords: true } type } => string.Join(", ", type.Words),
        Reading.OfFact => "a few words",
        _ => "yes, no",
    };

    private static string Outcome(AnswerOutlook answer, UnitSystem units)
    {
        if (answer.Difference is not { } difference) return "there is no plan";
        if (difference.After.Stops.Count > difference.Before.Stops.Count) return "the job stops";
        var parts = new List<string>();
        if (difference.StepsIn.Count > 0) parts.Add($"comes in: {Steps(difference.StepsIn, units)}");
        if (difference.StepsOut.Count > 0) parts.Add($"goes: {Steps(difference.StepsOut, units)}");
        if (difference.StepsMoved.Count > 0) parts.Add("the order changes");
        if (difference.Before.Labour != difference.After.Labour) parts.Add($"labour {difference.After.Labour.ToDisplay(units)}");
        var beside = difference.In.Concat(difference.Out).Count(item => item.Sort != PlanItemSort.Question);
        return parts.Count > 0 ? string.Join("; ", parts) : beside > 0 ? "the same steps, other notes and figures" : "nothing changes";
    }

    private static string Steps(IReadOnlyList<Plans.PlanStep> steps, UnitSystem units) =>
        string.Join(", ", steps.Take(MostSteps).Select(step => $"\"{step.Text.In(units)}\"")) + (steps.Count > MostSteps ? $" and {steps.Count - MostSteps} more" : "");
}
