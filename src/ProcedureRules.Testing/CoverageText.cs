using System.Globalization;
using ProcedureRules.Diagnostics;
using ProcedureRules.Reports;

namespace ProcedureRules.Testing;

/// <summary>Coverage as text: what no scenario reaches, each at its place; then the sums by pack.</summary>
public static class CoverageText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="report">The report.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(CoverageReport report, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(report);
        var writer = new ReportWriter(Math.Max(40, width));
        foreach (var rule in report.Rules) Gaps(rule, writer);
        foreach (var operation in report.Operations.Where(operation => operation.Planned == 0)) Gap(operation.Span, $"never planned: {operation.Operation}", writer);
        foreach (var fact in report.Facts.Where(fact => !fact.IsMet)) Gap(fact.Span, $"never known, never asked: {fact.Fact}", writer);
        foreach (var job in report.Jobs.Where(job => job.Asked == 0)) Gap(job.Span, $"never asked for: {job.Job}", writer);
        writer.Heading("Fired, conditions seen both to hold and not to, conclusions used");
        foreach (var pack in report.Rules.GroupBy(rule => rule.Pack)) Sum(pack.Key, [.. pack], writer);
        Sum($"all, over {Messages.Count(report.Cases, "case")}", report.Rules, writer);
        writer.Write("  ", $"operations planned {Share(report.Operations.Count(operation => operation.Planned > 0), report.Operations.Count)}, facts known or asked "
            + $"{Share(report.Facts.Count(fact => fact.IsMet), report.Facts.Count)}, jobs {Share(report.Jobs.Count(job => job.Asked > 0), report.Jobs.Count)}");
        return writer.Lines;
    }

    private static void Gaps(RuleCoverage rule, ReportWriter writer)
    {
        if (rule.Fired == 0) writer.Write($"{rule.Span}: ", $"{(rule.Matched == 0 ? "never matched" : "never fired")}: {rule.Rule}", Tone.Hazard);
        if (rule.Matched == 0) return;
        if (rule.Fired > 0)
            foreach (var conclusion in rule.Conclusions.Where(conclusion => conclusion.Used == 0)) Gap(conclusion.Span, $"never used: {conclusion.Text}", writer);
        foreach (var condition in rule.Conditions.Where(condition => !condition.IsSettledBothWays))
        {
            string[] missing = [.. new[] { ("yes", condition.Yes), ("no", condition.No) }.Where(seen => seen.Item2 == 0).Select(seen => seen.Item1)];
            writer.Write($"{condition.Span}: ", $"never {string.Join(", never ", missing)}: {condition.Text}", Tone.Question);
        }
    }

    private static void Gap(SourceSpan span, string text, ReportWriter writer) => writer.Write($"{span}: ", text, Tone.Question);

    private static void Sum(string name, IReadOnlyList<RuleCoverage> rules, ReportWriter writer)
    {
        var (conditions, settled) = (rules.Sum(rule => rule.Conditions.Count), rules.Sum(rule => rule.Conditions.Count(condition => condition.IsSettledBothWays)));
        var (conclusions, used) = (rules.Sum(rule => rule.Conclusions.Count), rules.Sum(rule => rule.Conclusions.Count(conclusion => conclusion.Used > 0)));
        writer.Write("  ", $"{name}: rules {Share(rules.Count(rule => rule.Fired > 0), rules.Count)}, conditions {Share(settled, conditions)}, conclusions {Share(used, conclusions)}");
    }

    private static string Share(int part, int whole) =>
        string.Create(CultureInfo.InvariantCulture, $"{part} of {whole} ({(whole == 0 ? 100 : 100.0 * part / whole):0} %)");
}
