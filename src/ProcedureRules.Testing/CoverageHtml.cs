using System.Globalization;
using System.Net;
using System.Text;
using ProcedureRules.Diagnostics;
using ProcedureRules.Testing.Covering;

namespace ProcedureRules.Testing;

/// <summary>Coverage as one HTML page that needs nothing else: the sums, then the text of each pack, lit by what the cases reach.</summary>
public static class CoverageHtml
{
    /// <summary>Writes the page.</summary>
    public static string Write(CoverageReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var page = new StringBuilder();
        var files = SourceMark.Of(report).GroupBy(mark => mark.Span.File!).OrderBy(file => file.Key.Path, StringComparer.Ordinal).ToList();
        page.Append("<!doctype html>\n<html lang=en>\n<meta charset=utf-8>\n<meta name=viewport content=\"width=device-width\">\n<title>Coverage of the packs</title>\n<style>\n")
            .Append(PageStyle.Css).Append("\n</style>\n<h1>What the scenarios reach of the packs</h1>\n");
        page.Append(CultureInfo.InvariantCulture, $"<p>{Messages.Count(report.Cases, "case")}. A condition is reached fully where it was seen both to hold and not to; the rest of the counts are counts of cases.</p>\n");
        Legend(page);
        Sums(report, [.. files.Select(file => file.Key)], page);
        var source = new SourcePage(page);
        foreach (var (file, number) in files.Select((file, number) => (file, number)))
        {
            page.Append(CultureInfo.InvariantCulture, $"<h2 id=file{number}>{WebUtility.HtmlEncode(file.Key.Path)}</h2>\n<div class=source>\n");
            source.Write(file.Key, [.. file]);
            page.Append("</div>\n");
        }

        return page.Append("</html>\n").ToString();
    }

    private static void Legend(StringBuilder page)
    {
        page.Append("<ul class=legend>");
        Sign(Reached.Fully, "reached", "solid line");
        Sign(Reached.Partly, "reached on one side only, or never fired", "dashed line");
        Sign(Reached.Never, "never reached", "wavy line");
        page.Append("<li>A sign at a gap leads to the next: <a href=#gap1>the first gap</a>.</ul>\n");

        void Sign(Reached reached, string meaning, string line) => page.Append(
            CultureInfo.InvariantCulture, $"<li><b class={SourcePage.Class(reached)}>{SourcePage.Glyph(reached)}</b> <mark class={SourcePage.Class(reached)}>{meaning}</mark> ({line})");
    }

    private static void Sums(CoverageReport report, List<SourceFile> files, StringBuilder page)
    {
        page.Append("<div class=scroll><table>\n<thead><tr><th>pack<th>rules fired<th>conditions both ways<th>conclusions used<th>operations planned<th>facts known or asked<th>jobs asked for</thead>\n<tbody>\n");
        var packs = report.Rules.Select(rule => (rule.Pack, rule.Span.File)).Concat(report.Operations.Select(operation => (operation.Pack, operation.Span.File)))
            .Concat(report.Facts.Select(fact => (fact.Pack, fact.Span.File))).Concat(report.Jobs.Select(job => (job.Pack, job.Span.File)))
            .DistinctBy(pack => pack.Pack).OrderBy(pack => pack.Pack, StringComparer.Ordinal);
        foreach (var (pack, file) in packs) Row($"<a href=#file{files.IndexOf(file!)}>{WebUtility.HtmlEncode(pack)}</a>", of => of == pack);
        page.Append("</tbody>\n<tfoot>\n");
        Row("all", _ => true);
        page.Append("</tfoot>\n</table></div>\n");

        void Row(string name, Func<string, bool> isMeant)
        {
            var rules = report.Rules.Where(rule => isMeant(rule.Pack)).ToList();
            page.Append(CultureInfo.InvariantCulture, $"<tr><td>{name}");
            Cell(rules.Select(rule => rule.Fired > 0));
            Cell(rules.SelectMany(rule => rule.Conditions).Select(condition => condition.IsSettledBothWays));
            Cell(rules.SelectMany(rule => rule.Conclusions).Select(conclusion => conclusion.Used > 0));
            Cell(report.Operations.Where(operation => isMeant(operation.Pack)).Select(operation => operation.Planned > 0));
            Cell(report.Facts.Where(fact => isMeant(fact.Pack)).Select(fact => fact.IsMet));
            Cell(report.Jobs.Where(job => isMeant(job.Pack)).Select(job => job.Asked > 0));
            page.Append('\n');
        }

        void Cell(IEnumerable<bool> reached)
        {
            var (part, whole) = reached.Aggregate((Part: 0, Whole: 0), (sum, isReached) => (sum.Part + (isReached ? 1 : 0), sum.Whole + 1));
            if (whole == 0) page.Append("<td>–");
            else page.Append(CultureInfo.InvariantCulture, $"<td>{part} of {whole}<span class=bar><span style=\"width:{100 * part / whole}%\"></span></span>");
        }
    }
}
