using System.Net;
using System.Text;

namespace ProcedureRules.Reports.Sheets;

/// <summary>Prints a work sheet as HTML. Boxes and blanks are drawn and take no input: what was ticked or typed into a page would be lost with it.</summary>
internal sealed class HtmlSheet
{
    private readonly StringBuilder _text = new();
    private string _list = "";

    public static string Write(WorkSheet sheet)
    {
        var writer = new HtmlSheet();
        writer.Line("<!DOCTYPE html>");
        writer.Line("<html lang=\"en\">");
        writer.Line("<head>");
        writer.Line("<meta charset=\"utf-8\"/>");
        writer.Line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
        writer.Line($"<title>{Escape(sheet.Title)}</title>");
        writer.Line($"<style>\n{SheetStyle.Css}</style>");
        writer.Line("</head>");
        writer.Line("<body>");
        writer.Line($"<header><h1>{Escape(sheet.Title)}</h1><p class=\"vehicle\">{Escape(sheet.Vehicle)}</p>");
        writer.Line($"<p class=\"fields\">{string.Concat(sheet.Fields.Select(field => $"<span class=\"field\">{Escape(field)}<span class=\"blank\"></span></span> "))}</p></header>");
        writer.Line("<main>");
        foreach (var block in sheet.Blocks) writer.Write(block);
        writer.List("");
        writer.Line("</main>");
        writer.Line("</body>");
        writer.Line("</html>");
        return writer._text.ToString();
    }

    private void Write(SheetBlock block)
    {
        List(block switch { SheetBlock.Tick => "ticks", SheetBlock.Line => "lines", _ => "" });
        switch (block)
        {
            case SheetBlock.Heading heading:
                Line($"<h2>{Escape(heading.Text)}</h2>");
                break;
            case SheetBlock.Place place:
                Line($"<p class=\"place\">Place: {Escape(place.Text)}</p>");
                break;
            case SheetBlock.Caution caution:
                var symbol = SignalWord.HasSymbol(caution.Signal) ? SheetStyle.AlertSymbol : "";
                var word = SignalWord.Word(caution.Signal);
                Line($"<p class=\"signal {word.ToLowerInvariant()}\"><b class=\"word\">{symbol}{word}</b> <span>{Escape(caution.Text)}</span></p>");
                break;
            case SheetBlock.Halt halt:
                Line($"<p class=\"halt\"><b class=\"word\">{Escape(halt.Word)}</b> <span>{Escape(halt.Text)}</span></p>");
                break;
            case SheetBlock.Condition condition:
                Line($"<p class=\"condition\">{Escape(condition.Text)}</p>");
                break;
            case SheetBlock.Blank blank:
                var notes = string.Concat(blank.Notes.Select(note => $"<span class=\"note\">{Escape(note)}</span>"));
                Line($"<p class=\"ask\"><span class=\"question\">{Escape(blank.Text)}</span>{notes}<span class=\"blank\"></span></p>");
                break;
            case SheetBlock.Tick tick:
                Line($"<li>{Escape(tick.Text)}</li>");
                break;
            case SheetBlock.Line line:
                Line($"<li>{Escape(line.Text)}</li>");
                break;
            case SheetBlock.Note note:
                Line($"<p class=\"note\">{Escape(note.Text)}</p>");
                break;
            case SheetBlock.Step step:
                Step(step);
                break;
        }
    }

    // What is read before a step stays on one page with it.
    private void Step(SheetBlock.Step step)
    {
        Line("<section class=\"step\">");
        foreach (var before in step.Before) Write(before);
        List("");
        Line($"<h3><span class=\"box\"></span><span class=\"number\">{step.Number}</span> <span class=\"instruction\">{Escape(step.Text)}</span> <span class=\"effort\">{Escape(step.Effort)}</span></h3>");
        foreach (var after in step.After) Write(after);
        List("");
        Line("</section>");
    }

    private void List(string list)
    {
        if (list == _list) return;
        if (_list.Length > 0) Line("</ul>");
        if (list.Length > 0) Line($"<ul class=\"{list}\">");
        _list = list;
    }

    private void Line(string text) => _text.Append(text).Append('\n');

    private static string Escape(string text) => WebUtility.HtmlEncode(PrintableText.Of(text));
}
