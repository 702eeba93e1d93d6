using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Yaml;

public class ScalarMapTests
{
    [Theory]
    [InlineData("when: pan.drop < needed")]
    [InlineData("when: 'it''s pan.drop < needed'")]
    [InlineData("when: \"a\\tb \\\"pan\\\" \\x41 < needed\"")]
    [InlineData("when: \"one \\\n  two < needed\"")]
    [InlineData("when: pan.drop\n  < \n\n  needed")]
    [InlineData("when: |\n  pan.drop\n    < needed\n")]
    [InlineData("when: >- # with a comment < needed\n  pan.drop\n  < needed\n\n  and more\n")]
    [InlineData("- when: |2+\n     pan.drop\n    < needed\n\n")]
    [InlineData("[ pan.drop  <   needed ]")]
    [InlineData("when: |\r\n  pan.drop\r\n  < needed\r\n")]
    public void SpanAt_WordInAnyStyle_IsItsPlaceInTheFile(string yaml)
    {
        var text = Only(Read.Text(yaml).Node!);

        var span = text.SpanAt(text.Text.IndexOf("needed", StringComparison.Ordinal), "needed".Length);
        Assert.Equal((yaml.LastIndexOf("needed", StringComparison.Ordinal), 6), (span.Offset, span.Length));
    }

    [Fact]
    public void SpanAt_Escape_CoversTheWholeEscape()
    {
        var text = Only(Read.Text("a: \"x\\u0041y \\U0001F527z\"").Node!);

        Assert.Equal("xAy \U0001F527z", text.Text);
        Assert.Equal([4, 5, 11, 12, 13, 13, 23, 24], Enumerable.Range(0, text.Text.Length + 1).Select(text.SourceOffset));
    }

    // YAML 1.2.2, examples 7.5 (double quoted line breaks), 7.9 (single quoted lines), 7.12 (plain lines),
    // 8.10 (folded lines) and 8.7 (literal scalar): https://yaml.org/spec/1.2.2/
    [Theory]
    [InlineData("\"folded \nto a space,\t\n \nto a line feed, or \t\\\n \\ \tnon-content\"", "folded to a space,\nto a line feed, or \t \tnon-content")]
    [InlineData("' 1st non-empty\n\n 2nd non-empty \n\t3rd non-empty '", " 1st non-empty\n2nd non-empty 3rd non-empty ")]
    [InlineData("1st non-empty\n\n 2nd non-empty \n\t3rd non-empty", "1st non-empty\n2nd non-empty 3rd non-empty")]
    [InlineData(">\n\n folded\n line\n\n next\n line\n   * bullet\n\n   * list\n   * lines\n\n last\n line\n\n# Comment\n", "\nfolded line\nnext line\n  * bullet\n\n  * list\n  * lines\n\nlast line\n")]
    [InlineData("|\n literal\n \ttext\n\n\n", "literal\n\ttext\n")]
    public void SourceOffset_ExamplesOfTheStandard_EachVisibleCharacterIsItself(string yaml, string expected)
    {
        var text = Read.Clean<YamlScalar>(yaml);

        Assert.Equal(expected, text.Text);
        AssertVisibleCharactersMatch(text);
    }

    [Property(MaxTest = 500)]
    public Property SourceOffset_RandomTextInEveryStyle_EachVisibleCharacterIsItself()
    {
        var word = Gen.NonEmptyListOf(Gen.Elements("abcdefXYZ<>=.()'\\".ToCharArray())).Select(string.Concat);
        var lines = Gen.NonEmptyListOf(Gen.NonEmptyListOf(word).Select(words => string.Join(' ', words)));
        return Prop.ForAll(Arb.From(Gen.Zip(lines, Gen.Choose(0, 3))), pair =>
        {
            var text = Read.Clean<YamlMapping>(Write(pair.Item1, pair.Item2)).Scalar("k")!;
            AssertVisibleCharactersMatch(text);
        });
    }

    // Indented by two, written in one of the four styles that can hold any visible character.
    private static string Write(IEnumerable<string> lines, int style)
    {
        var head = style switch { 0 => "|", 1 => ">", 2 => "'", _ => "\"" };
        var body = string.Join("\n  ", style switch
        {
            2 => lines.Select(line => line.Replace("'", "''", StringComparison.Ordinal)),
            3 => lines.Select(line => line.Replace("\\", "\\\\", StringComparison.Ordinal)),
            _ => lines,
        });
        return style < 2 ? $"k: {head}\n  {body}\n" : $"k: {head}{body}{head}\n";
    }

    private static void AssertVisibleCharactersMatch(YamlScalar text)
    {
        var raw = text.Span.File!.Text;
        var last = -1;
        for (var i = 0; i < text.Text.Length; i++)
        {
            if (char.IsWhiteSpace(text.Text[i]))
                continue;
            var at = text.SourceOffset(i);
            Assert.True(at > last && raw[at] == text.Text[i], $"character {i} of '{text.Text}' went to {at} of '{raw}'");
            last = at;
        }

        Assert.InRange(text.SourceOffset(text.Text.Length), last, text.Span.End);
    }

    private static YamlScalar Only(YamlNode node) => node switch
    {
        YamlScalar scalar => scalar,
        YamlSequence list => Only(list.Items.Single()),
        YamlMapping map => Only(map.Entries.Single().Value),
        _ => throw new ArgumentException("no text in it", nameof(node)),
    };
}
