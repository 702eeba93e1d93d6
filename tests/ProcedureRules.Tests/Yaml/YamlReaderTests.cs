using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Yaml;

public class YamlReaderTests
{
    [Fact]
    public void Read_MappingOfAllKinds_KeepsOrderTextAndPlaces()
    {
        var map = Read.Clean<YamlMapping>("b: one\na: [x, 'y z']\nc:\n  - {d: yes}\n");

        Assert.Equal(["b", "a", "c"], map.Entries.Select(entry => entry.Name));
        Assert.Equal("one", map.Text("b"));
        Assert.Equal(["x", "y z"], map.Scalars("a").Select(scalar => scalar.Text));
        Assert.True(map.Maps("c").Single().YesNo("d"));
        Assert.Equal("test.yaml:2:8", map.List("a")[1].Span.ToString());
        Assert.Equal(5, map.List("a")[1].Span.Length);
    }

    [Theory]
    [InlineData("12", 12)]
    [InlineData("-3", -3)]
    [InlineData("+4", 4)]
    [InlineData("'12'", null)]
    [InlineData("1.0", null)]
    [InlineData("0x1F", null)]
    [InlineData("99999999999", null)]
    [InlineData("-x", null)]
    public void Integer_Value_IsPlainDecimalDigits(string text, int? expected) =>
        Assert.Equal(expected, Read.Clean<YamlMapping>($"a: {{b: {text}}}").Map("a")!.Integer("b"));

    [Theory]
    [InlineData("a:\n  b: c\n\nd: e\n", "b: c")]
    [InlineData("a:\n- b\n- c # why\nd: e\n", "- b\n- c")]
    [InlineData("a: [b, [c, d]] # why\n", "[b, [c, d]]")]
    [InlineData("a: {b: c}\n", "{b: c}")]
    [InlineData("a: [ ]\n", "[ ]")]
    [InlineData("a:   b c   # why\n", "b c")]
    [InlineData("a: >\n  b\n  c\n\n", ">\n  b\n  c")]
    public void Span_Value_EndsWhereTheValueEnds(string text, string expected)
    {
        var span = Read.Clean<YamlMapping>(text).Value("a")!.Span;

        Assert.Equal(expected, text.Substring(span.Offset, span.Length));
    }

    [Fact]
    public void Read_LookUpsOfOtherKinds_AnswerNothing()
    {
        var map = Read.Clean<YamlMapping>("a: [1]\nb: text\n");

        Assert.Null(map.Text("a"));
        Assert.Null(map.Map("a"));
        Assert.Null(map.Integer("b"));
        Assert.Null(map.YesNo("b"));
        Assert.Null(map.Value("missing"));
        Assert.Empty(map.List("b"));
    }

    [Fact]
    public void Read_SeveralMistakes_TellsAllOfThem()
    {
        const string Text = """
            a: *x
            b: &y c
            c: !t d
            <<: {a: b}
            ? {a: b}
            : c
            x: 1
            x: 2
            """;

        Assert.Equal(
            """
            test.yaml:1:4: error PR0010: an alias ('*') is not used here; write the value out, or quote the text
            1 | a: *x
              |    ^^
            test.yaml:2:4: error PR0010: an anchor ('&') is not used here; write the value out, or quote the text
            2 | b: &y c
              |    ^^^^
            test.yaml:3:4: error PR0010: a tag ('!') is not used here; write the value out, or quote the text
            3 | c: !t d
              |    ^^^^
            test.yaml:4:1: error PR0010: a merge key ('<<') is not used here; write the value out, or quote the text
            4 | <<: {a: b}
              | ^^
            test.yaml:5:3: error PR0009: a key must be a text, this is a mapping
            5 | ? {a: b}
              |   ^^^^^^
            test.yaml:8:1: error PR0008: the key 'x' stands twice in this mapping
            8 | x: 2
              | ^
              = first here: test.yaml:7:1

            """,
            Read.Complaints(Text));
    }
}
