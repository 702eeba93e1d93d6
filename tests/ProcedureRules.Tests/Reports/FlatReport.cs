using System.Xml.Linq;
using Markdig;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;

namespace ProcedureRules.Tests.Reports;

/// <summary>What a person reads of a report, in its order, as one line of text: the pages as another program renders them.</summary>
internal static class FlatReport
{
    private static readonly MarkdownPipeline CommonMark = new MarkdownPipelineBuilder().UseTaskLists().Build();

    public static string Of(string format, Plan plan) => format switch
    {
        "text" => OneLine(string.Join('\n', PlanText.Lines(plan, UnitSystem.Us).Select(line => line.Text))),
        "markdown" => OfMarkdown(PlanMarkdown.Write(plan, UnitSystem.Us)),
        _ => OfHtml(PlanHtml.Write(plan, UnitSystem.Us)),
    };

    public static string OfMarkdown(string text) => OneLine(XDocument.Parse($"<div>{Markdown.ToHtml(text, CommonMark)}</div>", LoadOptions.PreserveWhitespace).Root!.Value);

    public static string OfHtml(string page) => OneLine(Page(page).Descendants("body").Single().Value);

    public static XDocument Page(string page) => XDocument.Parse(page, LoadOptions.PreserveWhitespace);

    public static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
