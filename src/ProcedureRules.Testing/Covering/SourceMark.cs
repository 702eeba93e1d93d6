using System.Globalization;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Covering;

/// <summary>What is said of a piece of a pack's text.</summary>
/// <param name="Span">The piece.</param>
/// <param name="Reached">How far the cases reach it.</param>
/// <param name="Text">What they came to.</param>
/// <param name="IsLit">Whether the piece itself is lit, rather than its line.</param>
internal sealed record SourceMark(SourceSpan Span, Reached Reached, string Text, bool IsLit = false)
{
    /// <summary>All marks of a report.</summary>
    public static IEnumerable<SourceMark> Of(CoverageReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return report.Rules.SelectMany(Of)
            .Concat(report.Operations.Select(operation => One(operation.Span, operation.Planned > 0, $"planned {Number(operation.Planned)}", "never planned")))
            .Concat(report.Facts.Select(fact => One(fact.Span, fact.IsMet, $"known {Number(fact.Known)}, asked {Number(fact.Asked)}", "never known or asked")))
            .Concat(report.Jobs.Select(job => One(job.Span, job.Asked > 0, $"asked {Number(job.Asked)}, to its end {Number(job.Finished)}", "never asked for")))
            .Where(mark => mark.Span.File is not null);
    }

    private static IEnumerable<SourceMark> Of(RuleCoverage rule)
    {
        yield return new SourceMark(
            rule.Span,
            rule.Fired > 0 ? Reached.Fully : rule.Matched > 0 ? Reached.Partly : Reached.Never,
            rule.Fired > 0 ? $"fired {Number(rule.Fired)}, surely {Number(rule.Sure)}" : rule.Matched > 0 ? $"matched {Number(rule.Matched)}, never fired" : "never matched");
        foreach (var condition in rule.Conditions) yield return Of(condition);
        foreach (var conclusion in rule.Conclusions) yield return One(conclusion.Span, conclusion.Used > 0, $"used {Number(conclusion.Used)}", "never used");
    }

    private static SourceMark Of(ConditionCoverage condition) => new(
        condition.Span,
        condition.IsSettledBothWays ? Reached.Fully : condition.Yes + condition.No + condition.Unknown > 0 ? Reached.Partly : Reached.Never,
        $"yes {Number(condition.Yes)}, no {Number(condition.No)}, unknown {Number(condition.Unknown)}",
        IsLit: true);

    private static SourceMark One(SourceSpan span, bool isReached, string reached, string never) => new(span, isReached ? Reached.Fully : Reached.Never, isReached ? reached : never);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
