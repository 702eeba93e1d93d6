using System.Globalization;
using ProcedureRules.Diagnostics;
using ProcedureRules.Reports;

namespace ProcedureRules.Testing;

/// <summary>Mutation as text: what no scenario noticed, each at its place with the scenario that is missing; then the sums by pack.</summary>
public static class MutationText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="report">The report.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(MutationReport report, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(report);
        var writer = new ReportWriter(Math.Max(40, width));
        foreach (var rule in report.Mutants.Where(mutant => mutant.Outcome != MutantOutcome.Killed).GroupBy(mutant => (mutant.Pack, mutant.Rule))) Survivors([.. rule], writer);
        writer.Heading("Changes that a scenario noticed");
        foreach (var pack in report.Mutants.GroupBy(mutant => mutant.Pack)) Sum(pack.Key, [.. pack], writer);
        Sum("all", report.Mutants, writer);
        return writer.Lines;
    }

    private static void Survivors(IReadOnlyList<MutantResult> survivors, ReportWriter writer)
    {
        var first = survivors[0];
        if (first.Outcome == MutantOutcome.Unreached)
        {
            writer.Write($"{first.Span}: ", $"matches in no scenario: {first.Rule} ({Messages.Count(survivors.Count, "change")})", Tone.Hazard);
            return;
        }

        foreach (var mutant in survivors)
        {
            writer.Write($"{mutant.Span}: ", $"not noticed: {mutant.Change}", Tone.Hazard);
            writer.Write("    due: ", mutant.Due, Tone.Question);
            if (mutant.Ground is { } ground) writer.Write("    why: ", ground);
        }
    }

    private static void Sum(string name, IReadOnlyList<MutantResult> mutants, ReportWriter writer)
    {
        var (killed, unreached) = (mutants.Count(mutant => mutant.Outcome == MutantOutcome.Killed), mutants.Count(mutant => mutant.Outcome == MutantOutcome.Unreached));
        var share = mutants.Count == 0 ? 100 : 100.0 * killed / mutants.Count;
        writer.Write("  ", string.Create(CultureInfo.InvariantCulture, $"{name}: {killed} of {mutants.Count} ({share:0} %){(unreached == 0 ? "" : $", {unreached} in rules that match in no scenario")}"));
    }
}
