using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>The open questions of a plan: in full those that are asked first, in short those that an answer to them may make needless.</summary>
internal static class QuestionList
{
    public static void Write(Plan plan, IReadOnlyList<QuestionOutlook>? outlook, UnitSystem units, ReportWriter writer)
    {
        var ranked = PlanWords.InTurn(plan, outlook);
        var number = 0;
        foreach (var question in ranked.Where(question => question.After.Count == 0))
        {
            if (number == 0) writer.Heading("Find out first");
            Write(question, outlook?.FirstOrDefault(other => other.Question.Id == question.Id), ++number, units, writer);
        }

        var later = ranked.Where(question => question.After.Count > 0).ToList();
        if (later.Count == 0) return;
        writer.Heading(PlanWords.LaterTitle);
        foreach (var question in later)
        {
            writer.Write($"  {++number,2}. ", question.Text.In(units), Tone.Question);
            if (question.How is { } how) writer.Write("      ", $"How: {how.In(units)}");
            foreach (var line in outlook?.FirstOrDefault(other => other.Question.Id == question.Id) is { } seen ? OutlookText.Answers(seen, units) : []) writer.Write("      ", line, Tone.Quiet);
            writer.Write("      ", $"{PlanWords.After(plan, question)} Answer with --set \"{question.Id}=...\"", Tone.Quiet);
        }
    }

    private static void Write(PlanQuestion question, QuestionOutlook? outlook, int number, UnitSystem units, ReportWriter writer)
    {
        writer.Write($"  {number,2}. ", question.Text.In(units), Tone.Question);
        if (question.Doubted is { } doubted) writer.Write("      ", doubted.In(units), Tone.Care);
        if (question.Assumed is { } assumed) writer.Write("      ", $"Assumed meanwhile: {assumed.In(units)}", Tone.Plain);
        if (question.How is { } how) writer.Write("      ", $"How: {how.In(units)}");
        foreach (var line in outlook is null ? [] : OutlookText.Effort(outlook, units)) writer.Write("      ", line, Tone.Quiet);
        foreach (var matters in question.Matters.DistinctBy(matters => matters.In(units)).Take(2)) writer.Write("      ", $"Decides: {matters.In(units)}", Tone.Quiet);
        foreach (var line in outlook is null ? [] : OutlookText.Answers(outlook, units)) writer.Write("      ", line, Tone.Quiet);
        var sure = question.Doubted is null ? "" : $"; \"{question.Id}=sure ...\" for a value outside what occurs";
        writer.Write("      ", $"Answer with --set \"{question.Id}=...\"{sure}", Tone.Quiet);
    }
}
