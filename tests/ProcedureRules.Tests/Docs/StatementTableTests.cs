using System.Text.RegularExpressions;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The statements that the reference shows can be made on its vehicle.</summary>
public partial class StatementTableTests
{
    [Fact]
    public void Statements_OfTheTable_AreReadAndChangeWhatIsStated()
    {
        var text = ReferencePage.Page.Text;
        var rows = Row().Matches(text[text.IndexOf("### Statements", StringComparison.Ordinal)..text.IndexOf("## Units", StringComparison.Ordinal)]).ToList();

        Assert.True(rows.Count >= 5);
        foreach (var statement in rows.Select(row => row.Groups[1].Value))
        {
            var bag = new DiagnosticBag();
            var next = StatementReader.Apply(statement, ReferencePage.Instance.Situation, Source.Measured, bag);
            Assert.Equal("", bag.ToSnippets());
            Assert.NotSame(ReferencePage.Instance.Situation, next);
        }
    }

    [GeneratedRegex(@"(?m)^\| `([^`]+=[^`]+)` \|")]
    private static partial Regex Row();
}
