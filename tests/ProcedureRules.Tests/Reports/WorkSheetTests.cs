using System.Xml.Linq;
using FsCheck;
using FsCheck.Xunit;
using ProcedureRules.Language;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using ProcedureRules.Reports.Sheets;
using ProcedureRules.Tests.ConsoleHost;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Reports;

/// <summary>The work sheet for the bay.</summary>
public class WorkSheetTests
{
    // Signal words and the safety alert symbol: ANSI Z535.6, from memory: the symbol goes with DANGER, WARNING and CAUTION where somebody may be hurt, and not with NOTICE.
    [Theory]
    [InlineData(Signal.Danger, true)]
    [InlineData(Signal.Warning, true)]
    [InlineData(Signal.Caution, true)]
    [InlineData(Signal.Notice, false)]
    public void Caution_OfASignal_HasTheAlertSymbolWhereSomebodyMayBeHurt(Signal signal, bool has)
    {
        var page = FlatReport.Page(HtmlSheet.Write(new WorkSheet("x", "y", [], [new SheetBlock.Caution(signal, "Mind it.")])));

        var caution = Assert.Single(page.Descendants("p"), part => Class(part).StartsWith("signal", StringComparison.Ordinal));
        Assert.Equal(signal.ToString().ToUpperInvariant(), caution.Element("b")!.Value);
        Assert.Equal(has, caution.Descendants("svg").Any());
        Assert.Equal(has, MarkdownSheet.Write(new WorkSheet("x", "y", [], [new SheetBlock.Caution(signal, "Mind it.")])).Contains('⚠', StringComparison.Ordinal));
    }

    [Fact]
    public void Html_OfTheDemoJob_HasABoxForEachStepAndABlankForEachQuestionAndCheck()
    {
        var plan = Shipped.Plan("oil-pan");

        var page = FlatReport.Page(PlanHtml.Write(plan, UnitSystem.Us));

        var steps = page.Descendants("section").ToList();
        Assert.Equal(plan.Steps.Count, steps.Count(step => step.Descendants().Any(part => Class(part) == "box")));
        foreach (var (step, printed) in plan.Steps.Zip(steps))
            Assert.True(printed.Descendants().Count(part => Class(part) == "blank") >= step.Checks.Count);
        var open = page.Descendants("main").Single().Elements().Count(part => Class(part) == "ask");
        Assert.Equal(plan.Questions.Count(question => question.AtStep is null || question.Doubted is not null), open);
    }

    [Fact]
    public void Html_OfAnyJob_BringsAllItNeedsAndRunsNothing()
    {
        var page = PlanHtml.Write(Shipped.Plan("oil-pan"), UnitSystem.Si);

        var tree = FlatReport.Page(page);
        Assert.DoesNotContain(tree.Descendants(), part => part.Name.LocalName is "script" or "link" or "img" or "input" or "iframe");
        Assert.DoesNotContain(tree.Descendants().Attributes(), attribute => attribute.Name.LocalName is "src" or "href" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain("url(", page, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", page, StringComparison.Ordinal);
    }

    /// <summary>Whatever a sheet, a pack or a technician writes: it reads as written, and marks nothing up.</summary>
    [Property(MaxTest = 400)]
    public void Text_OfAnySort_ReadsAsWritten(NonNull<string> one, NonNull<string> other) => ReadsAsWritten(one.Get, other.Get);

    [Theory]
    [InlineData("<script>alert(1)</script>", "a & b")]
    [InlineData("# no heading", "- [x] no *task* `code` ~~gone~~ https://example.org")]
    [InlineData("1. no list", "| no | table |")]
    [InlineData("1) no list", "+ neither")]
    [InlineData("> no quote", "&amp; stays &lt;")]
    [InlineData("---", "=== \\ [link](x)")]
    public void Text_ThatMarksUpElsewhere_ReadsAsWritten(string one, string other) => ReadsAsWritten(one, other);

    [Theory]
    [InlineData("markdown", "# Replace the oil pan\n")]
    [InlineData("html", "<!DOCTYPE html>\n")]
    public void Plan_WithFormat_PrintsTheWorkSheet(string format, string start)
    {
        var (exit, output, error) = RunHost.With("plan", RepositoryFiles.PathOf("samples", "jobs", "oil-pan.yaml"), "--format", format);

        Assert.Equal((0, ""), (exit, error));
        Assert.StartsWith(start, output, StringComparison.Ordinal);
    }

    private static void ReadsAsWritten(string one, string other)
    {
        var sheet = new WorkSheet($"a {one}", other, [], [
            new SheetBlock.Heading(one), new SheetBlock.Caution(Signal.Danger, other), new SheetBlock.Tick(one), new SheetBlock.Line(other),
            new SheetBlock.Blank(one, [other]), new SheetBlock.Step(1, other, one, [new SheetBlock.Halt("HOLD", one)], [new SheetBlock.Line(one), new SheetBlock.Note(other)]),
        ]);
        var (first, second) = (FlatReport.OneLine(Shown(one)), FlatReport.OneLine(Shown(other)));

        foreach (var flat in new[] { FlatReport.OfHtml(HtmlSheet.Write(sheet)), FlatReport.OfMarkdown(MarkdownSheet.Write(sheet)) })
        {
            Assert.True(Count(flat, first) >= (first.Length == 0 ? 0 : 6), $"{one} in {flat}");
            Assert.True(Count(flat, second) >= (second.Length == 0 ? 0 : 6), $"{other} in {flat}");
        }
    }

    private static int Count(string flat, string text) => text.Length == 0 ? 0 : flat.Split(text).Length - 1;

    private static string Shown(string text) => string.Concat(text.EnumerateRunes().Where(rune => System.Text.Rune.IsWhiteSpace(rune) || (rune.Value is not (0xFFFE or 0xFFFF) && !System.Text.Rune.IsControl(rune))).Select(rune => rune.ToString()));

    private static string Class(XElement part) => part.Attribute("class")?.Value ?? "";
}
