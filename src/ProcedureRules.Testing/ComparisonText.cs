using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using ProcedureRules.Testing.Comparing;

namespace ProcedureRules.Testing;

/// <summary>A comparison as text: the versions with what has changed, then what that does to plans, cause by cause.</summary>
public static class ComparisonText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="units">The units of labour.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(PackComparison comparison, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var writer = new ReportWriter(Math.Max(40, width));
        writer.Heading("Versions");
        foreach (var version in comparison.Versions.Where(version => version.Due is not null || !version.IsEnough || version.Before is null || version.After is null))
            writer.Write("  ", ComparisonWords.Of(version), version.IsEnough ? Tone.Plain : Tone.Hazard);
        if (comparison.Changes.Count == 0) writer.Write("  ", "The packs say the same.");
        foreach (var cause in comparison.Causes) Cause(cause, writer);
        List("Changes that no plan shows", comparison.Unseen.Select(change => $"{change.Span}: {change}"), writer);
        List("Only the packs before can read", comparison.OnlyBefore.Select(one => $"{one.Name}: {one.Why.Message}"), writer);
        List("Only the packs after can read", comparison.OnlyAfter, writer);
        List("Plans that change", comparison.Plans.Select(plan => $"{plan.Name}: {ComparisonWords.Of(plan, units)}"), writer);
        writer.Blank();
        writer.Write("", ComparisonWords.Sum(comparison));
        return writer.Lines;
    }

    private static void Cause(ChangeCause cause, ReportWriter writer)
    {
        writer.Blank();
        var lead = cause.Changes is [{ Span: var span }] ? $"{span}: " : "";
        writer.Write("", $"{lead}{ComparisonWords.Of(cause)}", Tone.Heading);
        foreach (var shared in ComparisonWords.ByPlans(cause))
        {
            writer.Write("  ", $"{ComparisonWords.Plans(shared[0].Plans)}:", Tone.Quiet);
            foreach (var effect in shared) writer.Write($"    {Sign(effect.Sort)} ", effect.Text, effect.Sort == PlanEffectSort.Out ? Tone.Care : Tone.Plain);
        }
    }

    private static void List(string heading, IEnumerable<string> texts, ReportWriter writer)
    {
        var all = texts.ToList();
        if (all.Count == 0) return;
        writer.Heading(heading);
        foreach (var text in all) writer.Write("  - ", text);
    }

    private static string Sign(PlanEffectSort sort) => sort switch { PlanEffectSort.In => "in:   ", PlanEffectSort.Out => "out:  ", PlanEffectSort.Moved => "moved:", _ => "other:" };
}
