using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Reports.Sheets;

namespace ProcedureRules.Reports;

/// <summary>A plan as a work sheet in Markdown (CommonMark, with the task lists that most readers know).</summary>
public static class PlanMarkdown
{
    /// <summary>The text; lines end with LF.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="sharing">What several jobs save by being done together; null where that is not told.</param>
    /// <param name="outlook">What hangs on the questions, the first to ask first; null where that is not told.</param>
    public static string Write(Plan plan, UnitSystem units, JobSharing? sharing = null, IReadOnlyList<QuestionOutlook>? outlook = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return MarkdownSheet.Write(WorkSheetLayout.Of(plan, units, sharing, outlook));
    }
}
