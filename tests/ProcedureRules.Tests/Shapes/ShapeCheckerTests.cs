using ProcedureRules.Shapes;
using ProcedureRules.Tests.Yaml;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Shapes;

public class ShapeCheckerTests
{
    [Fact]
    public void Check_EverythingRight_IsQuiet()
    {
        const string Text = """
            pack: bottom_end
            place: 2
            draft: yes
            parts: {oil_pan: pan, bolt: 7}
            then:
              - engine.height is raised
              - {need: engine.hold is blocks, rank: 3}
              - one_of:
                  - turn crank
                  - one_of: [a, {need: b}]
            """;

        Assert.Equal("", Check(Text));
    }

    [Fact]
    public void Check_ManyMistakes_TellsAllOfThemAtOnce()
    {
        const string Text = """
            plce: under
            draft: maybe
            parts:
              Oil Pan: [a]
            then:
              - {need: [a], rank: 12, why: x}
              - {nead: b}
              - {rank: 1}
              - one_of: [a]
              -
            """;

        Assert.Equal(
            """
            test.yaml:1:1: error PR0101: unknown key 'plce'; did you mean 'place'?
            1 | plce: under
              | ^^^^
            test.yaml:1:1: error PR0102: the key 'pack' is missing in a pack
            1 | plce: under
              | ^^^^
            test.yaml:2:8: error PR0103: yes or no is expected here, this is a text ('maybe')
            2 | draft: maybe
              |        ^^^^^
            test.yaml:4:3: error PR0105: 'Oil Pan' has the wrong form: lower-case letters, digits and '_' expected
            4 |   Oil Pan: [a]
              |   ^^^^^^^
            test.yaml:4:12: error PR0103: a text is expected here, this is a list
            4 |   Oil Pan: [a]
              |            ^^^
            test.yaml:6:12: error PR0103: an expression is expected here, this is a list
            6 |   - {need: [a], rank: 12, why: x}
              |            ^^^
            test.yaml:6:23: error PR0106: 12 is out of bounds: 1 to 9
            6 |   - {need: [a], rank: 12, why: x}
              |                       ^^
            test.yaml:6:27: error PR0101: unknown key 'why' in a need
            6 |   - {need: [a], rank: 12, why: x}
              |                           ^^^
            test.yaml:7:6: error PR0101: unknown key 'nead'; did you mean 'need'?
            7 |   - {nead: b}
              |      ^^^^
            test.yaml:8:6: error PR0107: this is not a conclusion: one of the keys 'need' or 'one_of' is expected
            8 |   - {rank: 1}
              |      ^^^^
            test.yaml:9:13: error PR0106: at least 2 items expected in this list, there is 1
            9 |   - one_of: [a]
              |             ^^^
            test.yaml:10:4: error PR0103: a conclusion is expected here, nothing is written
            10 |   -
               |    ^

            """.ReplaceLineEndings("\n"),
            Check(Text));
    }

    [Theory]
    [InlineData("[a]", "1:1: error PR0103: a pack (a mapping) is expected here, this is a list")]
    [InlineData("pack: ~", "1:7: error PR0103: a text is expected here, nothing is written")]
    [InlineData("pack: {a: b}", "1:7: error PR0103: a text is expected here, this is a mapping")]
    [InlineData("pack: a\nplace: undr", "2:8: error PR0104: 'undr' is not one of the words that can stand here; did you mean 'under'?")]
    [InlineData("pack: a\nplace: roof", "2:8: error PR0104: 'roof' is not one of the words that can stand here: 'under', 'bay' or '2'")]
    [InlineData("pack: a\nplace: [under]", "2:8: error PR0103: 'under', 'bay' or '2' is expected here, this is a list")]
    [InlineData("pack: a\ndraft: 'yes'", "2:8: error PR0103: yes or no is expected here, this is a quoted text ('yes')")]
    [InlineData("pack: a\nparts: [a]", "2:8: error PR0103: a mapping of names is expected here, this is a list")]
    [InlineData("pack: a\nthen: a text", "2:7: error PR0103: a list is expected here, this is a text ('a text')")]
    [InlineData("pack: a\nthen: []", "2:7: error PR0106: at least 1 item expected in this list, there are 0")]
    [InlineData("pack: a\nthen: [[a]]", "2:8: error PR0103: a conclusion is expected here, this is a list")]
    [InlineData("pack: a\nthen: [{need: a, rank: x}]", "2:24: error PR0103: a whole number is expected here, this is a text ('x')")]
    [InlineData("pack: a\nthen: [{need: a, rank: 99999999999}]", "2:24: error PR0106: 99999999999 is out of bounds: 1 to 9")]
    [InlineData("pack: a\nthen: [{need: a, one_of: [a, b]}]", "2:18: error PR0101: unknown key 'one_of' in a need")]
    public void Check_OneMistake_SaysWhatIsExpectedAndWhatIsThere(string text, string expected) =>
        Assert.Equal($"test.yaml:{expected}", Check(text).Split('\n')[0]);

    [Fact]
    public void Check_WordsWithANearOne_StillListsThem()
    {
        Assert.Equal(
            """
            test.yaml:2:8: error PR0104: 'undr' is not one of the words that can stand here; did you mean 'under'?
            2 | place: undr
              |        ^^^^
              = note: the words are 'under', 'bay' or '2'

            """.ReplaceLineEndings("\n"),
            Check("pack: a\nplace: undr"));
    }

    [Fact]
    public void Check_WrongForm_GivesAnExample()
    {
        Assert.Equal(
            """
            test.yaml:1:7: error PR0105: 'Bottom End' has the wrong form: lower-case letters, digits and '_' expected
            1 | pack: Bottom End
              |       ^^^^^^^^^^
              = note: for example 'bottom_end'

            """.ReplaceLineEndings("\n"),
            Check("pack: Bottom End"));
    }

    [Fact]
    public void Check_UnreadableValue_IsNotReportedTwice()
    {
        Assert.Equal(
            "test.yaml:1:7: error PR0010: an alias ('*') is not used here; write the value out, or quote the text",
            Check("pack: *a").Split('\n')[0]);
        Assert.Equal(4, Check("pack: *a").Split('\n').Length);
    }

    private static string Check(string text)
    {
        var (node, bag) = Read.Text(text);
        ShapeChecker.Check(Assert.IsAssignableFrom<YamlNode>(node), SmallShape.Root, bag);
        return bag.ToSnippets();
    }
}
