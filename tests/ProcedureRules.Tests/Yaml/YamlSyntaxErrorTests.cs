using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Yaml;

public class YamlSyntaxErrorTests
{
    [Theory]
    [InlineData("a: [1, 2", "1:9: error PR0005: this is not well-formed YAML: ',' or ']' is expected here")]
    [InlineData("a: {b: c", "1:9: error PR0005: this is not well-formed YAML: ',' or '}' is expected here")]
    [InlineData("x: [{a} < b]", "1:9: error PR0005: this is not well-formed YAML: ',' or ']' is expected here")]
    [InlineData("a: b: c", "1:5: error PR0005: this is not well-formed YAML: a text that holds ': ' has to stand in quotes")]
    [InlineData("a: 'x\nb: c", "1:4: error PR0005: this is not well-formed YAML: the quote that opens here is never closed")]
    [InlineData("a: @x", "1:4: error PR0005: this is not well-formed YAML: a text that starts with this character has to stand in quotes")]
    [InlineData("a: \"\\q\"", "1:4: error PR0005: this is not well-formed YAML: a backslash within double quotes starts an escape; use single quotes to keep it")]
    [InlineData("- a\nb: c", "2:1: error PR0005: this is not well-formed YAML: '- ' is expected here, as before the items above")]
    [InlineData("a: {b: c}}", "1:10: error PR0005: this is not well-formed YAML: a key is expected here, as far in as the keys above")]
    [InlineData("]", "1:1: error PR0005: this is not well-formed YAML: a value is expected here")]
    [InlineData("a:\n\tb: c", "2:1: error PR0005: a tab cannot indent a line of YAML; use spaces")]
    [InlineData("...\n...", "2:4: error PR0005: this is not well-formed YAML: a bracket, a comma or a quote is missing")]
    [InlineData("", "1:1: error PR0006: the file holds nothing")]
    [InlineData("# only a comment\n", "1:1: error PR0006: the file holds nothing")]
    [InlineData("~", "1:1: error PR0006: the file holds nothing")]
    [InlineData("a: 1\r\n---\r\nb: 2", "2:1: error PR0007: a second document starts here; a file holds one")]
    [InlineData(": a", "1:1: error PR0009: a key must be a text, nothing is written here")]
    [InlineData("a: b\0c: d", "1:5: error PR0004: a file may not hold the character U+0000")]
    [InlineData("a: b\u2028c", "1:5: error PR0004: a file may not hold the character U+2028")]
    [InlineData("a: \uFFFF", "1:4: error PR0004: a file may not hold the character U+FFFF")]
    public void Read_BrokenText_SaysWhereAndWhatInPlainWords(string text, string expected)
    {
        Assert.Equal($"test.yaml:{expected}\n", Read.Text(text).Bag.ToLines());
    }

    [Fact]
    public void Read_SurrogatePairAndAccents_AreFine() =>
        Assert.Equal("\U0001F527 größe", Read.Clean<YamlMapping>("a: \U0001F527 größe").Text("a"));

    [Fact]
    public void Read_HalfASurrogatePair_IsRefused() =>
        Assert.Equal(
            "test.yaml:1:4: error PR0004: a file may not hold the character U+D83D\n",
            Read.Text("a: " + "\U0001F527"[0] + "b").Bag.ToLines());
}
