using ProcedureRules.Explaining;
using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>A question as it is put in an interview: with how to find out, what can be answered, and what each answer would make of the plan.</summary>
public static class QuestionText
{
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
        foreach (var line in OutlookText.Effort(outlook, units)) writer.Write("     ", line, Tone.Quiet);
        foreach (var line in OutlookText.Answers(outlook, units)) writer.Write("     ", line, Tone.Quiet);
        return writer.Lines;
    }

    /// <summary>The end of an interview: what stays open, and what the plan comes to.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="open">The ids of what nobody knew.</param>
    /// <param name="isSettled">Whether nothing else was found that can change the plan.</param>
    /// <param name="unproven">What was not found to matter and may all the same.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Closing(Plans.Plan plan, IReadOnlyCollection<string> open, bool isSettled, IReadOnlyList<Plans.PlanQuestion> unproven, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(open);
        var writer = new ReportWriter(Math.Max(40, width));
        if (isSettled) writer.Write("", open.Count + unproven.Count == 0 ? "Nothing left can change the plan." : "Nothing else can change the plan.");
        if (unproven.Count > 0)
            writer.Write("", $"Not found to matter, though the search could not rule it out: {string.Join(", ", unproven.Select(question => question.Id))}.");
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
}
