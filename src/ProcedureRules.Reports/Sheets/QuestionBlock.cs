using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports.Sheets;

/// <summary>A question with a blank for its answer.</summary>
internal static class QuestionBlock
{
    private const int MostMatters = 2;

    public static SheetBlock Of(Plan plan, PlanQuestion question, QuestionOutlook? outlook, UnitSystem units) => new SheetBlock.Blank(
        question.Text.In(units),
        [
            .. question.Doubted is { } doubted ? [doubted.In(units)] : Array.Empty<string>(),
            .. question.Assumed is { } assumed ? [$"Assumed meanwhile: {assumed.In(units)}"] : Array.Empty<string>(),
            .. question.How is { } how ? [$"How: {how.In(units)}"] : Array.Empty<string>(),
            .. outlook is null ? [] : OutlookText.Effort(outlook, units),
            .. question.After.Count > 0 ? [PlanWords.After(plan, question)] : Array.Empty<string>(),
            .. question.Matters.Select(matters => $"Decides: {matters.In(units)}").Distinct().Take(MostMatters),
            .. outlook is null ? [] : OutlookText.Answers(outlook, units),
        ]);
}
