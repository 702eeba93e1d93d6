using System.Text.RegularExpressions;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>
/// The tables of the reference: those written from code are as the code writes them, and every example gives what the page says. With the
/// environment variable UPDATE_DOCS=1 the tests write the page anew instead.
/// </summary>
public partial class ReferenceTableTests
{
    private static readonly MarkdownPage Page = ReferencePage.Page;

    [Fact]
    public void Page_GeneratedTablesAndResults_AreAsTheCodeWritesThem()
    {
        var stale = new List<string>();
        foreach (var name in Page.Generated)
        {
            var due = GeneratedSections.All[name]();
            if (Page.Section(name) == due) continue;
            stale.Add(name);
            if (MarkdownPage.IsUpdate) Page.WriteSection(name, due);
        }

        foreach (var (line, number, due) in Results().ToList())
        {
            if (line == due) continue;
            stale.Add(due);
            if (MarkdownPage.IsUpdate) Page.ReplaceLine(number, due);
        }

        if (MarkdownPage.IsUpdate) Page.Save();
        else Assert.Empty(stale);
    }

    [Fact]
    public void Page_GeneratedSections_AreAllThereAndOnce() =>
        Assert.Equal(GeneratedSections.All.Keys.Order(), Page.Generated.Order());

    [Fact]
    public void Functions_EveryFunction_HasAnExample() =>
        Assert.Equal(ProcedureEngine.Functions.Documentation.Keys.Order(), GeneratedSections.FunctionExamples.Keys.Order());

    [Fact]
    public void Operators_EveryOperator_StandsInTheTable()
    {
        var text = Page.Text[Page.Text.IndexOf("**Operators**", StringComparison.Ordinal)..Page.Text.IndexOf("**Functions**", StringComparison.Ordinal)];
        var shown = text.Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .SelectMany(line => Code().Matches(line.Split(" | ")[0]).Select(match => match.Groups[1].Value)).ToHashSet();
        var all = Enum.GetValues<BinaryOperator>().Select(Operators.Text).Concat(Operators.Keywords.Except(["yes", "no", "job"]));

        Assert.Empty(all.Except(shown));
    }

    [Fact]
    public void Units_EverySpelling_IsReadInItsDimension()
    {
        foreach (var unit in UnitTable.All)
        {
            foreach (var spelling in unit.Names)
            {
                var text = unit.Prefix is null ? $"3 {spelling}" : $"{unit.Prefix} 3 {spelling}";
                Assert.True(Quantity.TryRead(text, unit.Dimension, out var value, out _), text);
                Assert.Equal(Quantity.Of(3, unit.ToString()), value);
            }
        }
    }

    // The rows of tables with a column "gives" behind a column "example"; a text with braces is run as a text.
    private static IEnumerable<(string Line, int Number, string Due)> Results()
    {
        var (example, gives) = (-1, -1);
        foreach (var (line, number) in Page.Lines())
        {
            if (!line.StartsWith('|'))
            {
                example = -1;
                continue;
            }

            var cells = line.Split(" | ");
            if (line.Contains("| gives |", StringComparison.Ordinal))
            {
                var heads = line.Split('|').Select(cell => cell.Trim()).ToList();
                (example, gives) = (heads.IndexOf("example"), heads.LastIndexOf("gives"));
            }
            else if (example > 0 && Row().Match(line) is { Success: true })
            {
                cells = line.Split('|');
                var text = cells[example].Trim().Trim('`');
                cells[gives] = $" {(text.Contains('{', StringComparison.Ordinal) ? PageExpressions.Render(text) : PageExpressions.Evaluate(text))} ";
                yield return (line, number, string.Join('|', cells));
            }
        }
    }

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Code();

    [GeneratedRegex(@"^\| `")]
    private static partial Regex Row();
}
