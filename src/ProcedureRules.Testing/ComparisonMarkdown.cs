using System.Text;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Comparing;

namespace ProcedureRules.Testing;

/// <summary>A comparison as Markdown for a review: what has to be decided on first, lists to fold out for the rest.</summary>
public static class ComparisonMarkdown
{
    /// <summary>Writes the document; lines end with LF.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="units">The units of labour.</param>
    public static string Write(PackComparison comparison, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var page = new StringBuilder($"## {ComparisonWords.Sum(comparison)}\n\n");
        page.Append(comparison.Changes.Count == 0 ? "The packs say the same.\n" : "| pack | before | after | due | |\n|---|---|---|---|---|\n");
        foreach (var version in comparison.Versions.Where(version => version.Due is not null || !version.IsEnough || version.Before is null || version.After is null))
            page.Append($"| {Plain(version.Pack)} | {version.Before ?? "none"} | {version.After ?? "none"} | {(version.Due is { } due ? ComparisonWords.Word(due) : "none")} | {Verdict(version)} |\n");
        foreach (var cause in comparison.Causes) Cause(cause, page);
        List("Changes that no plan shows", [.. comparison.Unseen.Select(change => $"{Plain(change.ToString())} `{change.Span}`")], page);
        List("Only the packs before can read", [.. comparison.OnlyBefore.Select(one => Plain($"{one.Name}: {one.Why.Message}"))], page);
        List("Only the packs after can read", [.. comparison.OnlyAfter.Select(Plain)], page);
        List("Plans that change", [.. comparison.Plans.Select(plan => Plain($"{plan.Name}: {ComparisonWords.Of(plan, units)}"))], page);
        return page.ToString();
    }

    private static void Cause(ChangeCause cause, StringBuilder page)
    {
        page.Append($"\n### {Plain(ComparisonWords.Of(cause))}\n\n");
        if (cause.Changes is [{ Span: var span }]) page.Append($"`{span}`\n\n");
        foreach (var shared in ComparisonWords.ByPlans(cause))
        {
            page.Append($"- {Plain(ComparisonWords.Plans(shared[0].Plans))}\n");
            foreach (var effect in shared) page.Append($"  - **{Word(effect.Sort)}** {Plain(effect.Text)}\n");
        }
    }

    private static void List(string heading, IReadOnlyList<string> items, StringBuilder page)
    {
        if (items.Count == 0) return;
        page.Append($"\n<details><summary>{heading}: {items.Count}</summary>\n\n");
        foreach (var item in items) page.Append($"- {item}\n");
        page.Append("\n</details>\n");
    }

    private static string Verdict(VersionStep version) =>
        version.Before is null || version.After is null ? "" : version.IsEnough ? "enough" : version.Least is { } least ? $"**{least} at least**" : "**lower than before**";

    private static string Word(PlanEffectSort sort) => sort switch { PlanEffectSort.In => "in", PlanEffectSort.Out => "out", PlanEffectSort.Moved => "moved", _ => "otherwise" };

    // Words of packs are words, whatever signs they hold.
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var sign in text.ReplaceLineEndings(" "))
        {
            if (sign is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' or '~' or '&') plain.Append('\\');
            plain.Append(sign);
        }

        return plain.ToString();
    }
}
