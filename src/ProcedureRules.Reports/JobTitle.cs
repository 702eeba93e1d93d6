using ProcedureRules.Facts;

namespace ProcedureRules.Reports;

/// <summary>The words for a job on a part.</summary>
internal static class JobTitle
{
    public static string Of(JobRequest request) => request.Job.Text.Text.Replace("{it}", request.On.Text, StringComparison.Ordinal);
}
