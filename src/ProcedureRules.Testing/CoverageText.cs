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
        writer.Heading("Fired, and conditions seen both to hold and not to");
        foreach (var pack in report.Rules.GroupBy(rule => rule.Pack)) Sum(pack.Key, [.. pack], writer);
        Sum($"all, over {Messages.Count(report.Cases, "case")}", report.Rules, writer);
        return writer.Lines;
    }

    private static void Gaps(RuleCoverage rule, ReportWriter writer)
    {
        if (rule.Fired == 0) writer.Write($"{rule.Span}: ", $"{(rule.Matched == 0 ? "never matched" : "never fired")}: {rule.Rule}", Tone.Hazard);
        if (rule.Matched == 0) return;
        foreach (var condition in rule.Conditions.Where(condition => !condition.IsSettledBothWays))
        {
            string[] missing = [.. new[] { ("yes", condition.Yes), ("no", condition.No) }.Where(seen => seen.Item2 == 0).Select(seen => seen.Item1)];
            writer.Write($"{condition.Span}: ", $"never {string.Join(", never ", missing)}: {condition.Text}", Tone.Question);
        }
    }

    private static void Sum(string name, IReadOnlyList<RuleCoverage> rules, ReportWriter writer)
    {
        var (conditions, settled) = (rules.Sum(rule => rule.Conditions.Count), rules.Sum(rule => rule.Conditions.Count(condition => condition.IsSettledBothWays)));
        writer.Write("  ", $"{name}: rules {Share(rules.Count(rule => rule.Fired > 0), rules.Count)}, conditions {Share(settled, conditions)}");
    }

    private static string Share(int part, int whole) =>
        string.Create(CultureInfo.InvariantCulture, $"{part} of {whole} ({(whole == 0 ? 100 : 100.0 * part / whole):0} %)");
}
