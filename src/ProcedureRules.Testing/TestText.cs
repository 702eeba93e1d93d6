using System.Globalization;
using ProcedureRules.Diagnostics;
using ProcedureRules.Reports;

namespace ProcedureRules.Testing;

/// <summary>Results as text: what failed, with what came and why; then the sums.</summary>
public static class TestText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="results">The results.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(IReadOnlyList<CaseResult> results, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(results);
        var writer = new ReportWriter(Math.Max(40, width));
        foreach (var result in results.Where(result => !result.Passed)) Failed(result, writer);
        Sums(results, writer);
        return writer.Lines;
    }

    private static void Failed(CaseResult result, ReportWriter writer)
    {
        writer.Blank();
        writer.Write("FAILED ", result.Case.Name, Tone.Heading);
        foreach (var mistake in result.Diagnostics.Where(mistake => mistake.Severity == Severity.Error))
        {
            writer.Write("  ", mistake.ToLine(), Tone.Hazard);
            foreach (var note in mistake.Notes) writer.Write("    - ", note.Text, Tone.Quiet);
        }

        foreach (var failure in result.Failures)
        {
            writer.Write("  ", $"{failure.Span}:{(failure.Turn == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" turn {failure.Turn}"))}", Tone.Quiet);
            writer.Write("    expected  ", failure.Expected, Tone.Hazard);
            writer.Write("    came      ", failure.Came, Tone.Question);
            foreach (var line in failure.Because) Because(line, writer);
        }
    }

    // The indent of an explanation says what rests on what.
    private static void Because(string line, ReportWriter writer)
    {
        var indent = line.Length - line.TrimStart(' ', '-').Length;
        writer.Write($"    | {line[..indent]}", line[indent..], Tone.Quiet);
    }

    private static void Sums(IReadOnlyList<CaseResult> results, ReportWriter writer)
    {
        var failed = results.Count(result => !result.Passed);
        var expectations = results.Sum(result => result.Expectations.Count);
        writer.Blank();
        writer.Write("", $"{Messages.Count(results.Count, "case")} of {Messages.Count(results.Select(result => (result.Case.Scenario, result.Case.Span.File)).Distinct().Count(), "scenario")}, "
            + $"{Messages.Count(expectations, "expectation")}: {(failed == 0 ? "all passed" : $"{failed} failed")}.", failed == 0 ? Tone.Plain : Tone.Hazard);
    }
}
