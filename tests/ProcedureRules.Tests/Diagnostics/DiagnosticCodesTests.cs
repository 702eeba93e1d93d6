using ProcedureRules.Diagnostics;
using Xunit;

namespace ProcedureRules.Tests.Diagnostics;

public class DiagnosticCodesTests
{
    [Fact]
    public void All_Codes_AreUniqueOrderedAndWhole()
    {
        var codes = DiagnosticCodes.All;

        Assert.Equal(codes.Select(code => code.Code).Distinct().Order(StringComparer.Ordinal), codes.Select(code => code.Code));
        Assert.All(codes, code =>
        {
            Assert.Matches(@"^PR0[0-9]\d\d$", code.Code);
            Assert.DoesNotMatch(@"\.$|\n", code.Title);
            Assert.EndsWith(".", code.Cure, StringComparison.Ordinal);
            Assert.NotEmpty(code.Example);
        });
    }

    [Fact]
    public void All_YamlAndShapes_AreRegistered()
    {
        Assert.NotNull(DiagnosticCodes.Find("pr0001"));
        Assert.NotNull(DiagnosticCodes.Find("PR0101"));
        Assert.Null(DiagnosticCodes.Find("PR9999"));
    }

    [Fact]
    public void Markdown_EachCode_HasOneRow()
    {
        var rows = DiagnosticTable.Markdown().Split('\n');

        Assert.Equal(DiagnosticCodes.All.Count + 3, rows.Length);
        Assert.Contains("| PR0007 | A file holds more than one document | `pack: engine`<br>`---`<br>`pack: gearbox` | Put each document into a file of its own. |", rows);
    }

    [Theory]
    [InlineData("plain", "'plain'")]
    [InlineData("a\nb\tc\u001B", "'a\\nb\\tcU+001B'")]
    [InlineData("1234567890123456789012345678901234567890123456789012345678901", "'123456789012345678901234567890123456789012345678901234567890...'")]
    public void Quote_AnyText_IsOneShortLine(string text, string expected) => Assert.Equal(expected, Messages.Quote(text));

    [Theory]
    [InlineData("", "")]
    [InlineData("a", "'a'")]
    [InlineData("a b", "'a' or 'b'")]
    [InlineData("a b c", "'a', 'b' or 'c'")]
    [InlineData("a b c d", "'a', 'b', 'c' or 1 other")]
    [InlineData("a b c d e", "'a', 'b', 'c' or 2 others")]
    public void Either_Words_ReadAsASentence(string words, string expected) =>
        Assert.Equal(expected, Messages.Either(words.Split(' ', StringSplitOptions.RemoveEmptyEntries), most: 3));
}
