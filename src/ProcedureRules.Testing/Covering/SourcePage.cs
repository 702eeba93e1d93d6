using System.Globalization;
using System.Net;
using System.Text;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Covering;

/// <summary>Writes the text of packs line by line, lit by what cases reach. A gap leads to the next one.</summary>
internal sealed class SourcePage(StringBuilder page)
{
    private static readonly string[] Glyphs = ["✗", "◐", "✓"];
    private static readonly string[] Classes = ["never", "partly", "fully"];
    private int _gaps;

    /// <summary>The sign that stands for a state, so that it can be told without colour.</summary>
    public static string Glyph(Reached reached) => Glyphs[(int)reached];

    /// <summary>The style class of a state.</summary>
    public static string Class(Reached reached) => Classes[(int)reached];

    /// <summary>Writes a file.</summary>
    public void Write(SourceFile file, IEnumerable<SourceMark> marks)
    {
        var byLine = marks.OrderBy(mark => mark.Span.Offset).ToLookup(mark => mark.Span.Line);
        var lit = marks.Where(mark => mark.IsLit).OrderBy(mark => mark.Span.Offset).ToList();
        for (var line = 1; line <= file.LineCount; line++)
        {
            // Behind a last line break there is no line that anybody would count.
            if (line == file.LineCount && file.LineText(line).Length == 0) continue;
            Write(file, line, [.. byLine[line]], lit);
        }
    }

    private void Write(SourceFile file, int line, IReadOnlyList<SourceMark> here, IReadOnlyList<SourceMark> lit)
    {
        page.Append(CultureInfo.InvariantCulture, $"<div><i>{line}</i>");
        if (here.Count == 0)
        {
            page.Append("<b></b><em></em>");
        }
        else
        {
            var worst = here.Min(mark => mark.Reached);
            var said = string.Join("; ", here.Where(mark => !mark.IsLit).Select(mark => mark.Text).Distinct().Concat(Conditions(here)));
            if (worst == Reached.Fully) page.Append(CultureInfo.InvariantCulture, $"<b class=fully>{Glyph(worst)}</b>");
            else page.Append(CultureInfo.InvariantCulture, $"<b class={Class(worst)} id=gap{++_gaps}><a href=#gap{_gaps + 1} title=\"on to the next gap\">{Glyph(worst)}</a></b>");
            page.Append(CultureInfo.InvariantCulture, $"<em class={Class(worst)}>{said}</em>");
        }

        page.Append("<code>");
        Text(file.LineText(line), file.OffsetOf(line), lit);
        page.Append("</code></div>\n");
    }

    private static IEnumerable<string> Conditions(IReadOnlyList<SourceMark> here)
    {
        var conditions = here.Where(mark => mark.IsLit).ToList();
        return conditions.Count switch
        {
            0 => [],
            1 => [conditions[0].Text],
            _ => [string.Create(CultureInfo.InvariantCulture, $"{conditions.Count(mark => mark.Reached == Reached.Fully)} of {conditions.Count} both ways")],
        };
    }

    private void Text(string text, int offset, IReadOnlyList<SourceMark> lit)
    {
        var at = 0;
        foreach (var mark in lit)
        {
            var (start, end) = (Math.Max(mark.Span.Offset - offset, at), Math.Min(mark.Span.End - offset, text.Length));
            if (start >= end) continue;
            page.Append(WebUtility.HtmlEncode(text[at..start]));
            page.Append(CultureInfo.InvariantCulture, $"<mark class={Class(mark.Reached)} title=\"{mark.Text}\">{WebUtility.HtmlEncode(text[start..end])}</mark>");
            at = end;
        }

        page.Append(WebUtility.HtmlEncode(text[at..]));
    }
}
