using ProcedureRules.Explaining;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Reports.Sheets;

namespace ProcedureRules.Reports;

/// <summary>A plan as a work sheet in HTML: one file without script that asks nothing of a network, for a phone and for paper.</summary>
public static class PlanHtml
{
    /// <summary>The page, well-formed as XML, too; lines end with LF.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="sharing">What several jobs save by being done together; null where that is not told.</param>
    /// <param name="outlook">What hangs on the questions, the first to ask first; null where that is not told.</param>
    public static string Write(Plan plan, UnitSystem units, JobSharing? sharing = null, IReadOnlyList<QuestionOutlook>? outlook = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return HtmlSheet.Write(WorkSheetLayout.Of(plan, units, sharing, outlook));
    }
}
