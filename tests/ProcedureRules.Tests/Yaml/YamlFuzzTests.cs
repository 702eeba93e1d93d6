using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Yaml;

/// <summary>Whatever the text, reading gives nodes or complaints with places, never an exception.</summary>
public class YamlFuzzTests
{
    private const string Valid = """
        # a comment
        pack: bottom-end
        parts:
          oil_pan: {kind: pan, aspects: [place, 'flange', "sealed"]}
        rules:
          - rule: a pan that cannot drop
            when: [ s leaves oil_pan.place fitted, pan.drop < 2 in ]
            then:
              - {do: turn crank, rank: 1}
              - {need: engine.height is raised}
            because: >-
              The pan needs {pan.needed}
              and has less.
            basis: |
              common practice
        """;

    private static readonly string[] Pieces =
        ["[", "]", "{", "}", ": ", "- ", "? ", "\"", "'", "|", ">", "&a ", "*a", "!t ", "<<: ", "%", "@", "`", "#", "\t", "\n", "\r\n", "\r", "\0", "\u0085", "\u2028", "\uFEFF", "\uD83D", "---\n", "...\n", "\\", ",", "  ", "null", "|9-", "\\x4", "\u001B"];

    [Property(MaxTest = 500)]
    public void Read_AnyText_GivesNodesOrComplaints(NonNull<string> text) => AssertTotal(text.Get);

    [Property(MaxTest = 1000)]
    public Property Read_IndicatorsAtRandom_GivesNodesOrComplaints() =>
        Prop.ForAll(Arb.From(Gen.ListOf(Gen.Elements(Pieces.Append("a").Append("b").ToArray())).Select(string.Concat)), AssertTotal);

    [Property(MaxTest = 1000)]
    public Property Read_ValidTextWithDamage_GivesNodesOrComplaints()
    {
        var damage = Gen.NonEmptyListOf(Gen.Zip(Gen.Choose(0, Valid.Length), Gen.Choose(-5, Pieces.Length - 1)));
        return Prop.ForAll(Arb.From(damage.Select(all => all.Take(4).Aggregate(Valid, Damage))), AssertTotal);
    }

    [Fact]
    public void Read_ValidText_IsClean() => Assert.Equal(3, Read.Clean<YamlMapping>(Valid).Entries.Count);

    // A negative choice cuts that many characters, any other puts a piece in.
    private static string Damage(string text, (int At, int Choice) how)
    {
        var at = Math.Min(how.At, text.Length);
        return how.Choice < 0
            ? text.Remove(at, Math.Min(-how.Choice, text.Length - at))
            : text.Insert(at, Pieces[how.Choice]);
    }

    private static void AssertTotal(string text)
    {
        var (node, bag) = Read.Text(text);

        Assert.True(node is not null || bag.HasErrors, "neither a node nor a complaint");
        foreach (var diagnostic in bag.Ordered())
            AssertInside(diagnostic.Span);
        if (node is not null)
            AssertPlaces(node);

        Assert.Equal(bag.Count, bag.ToLines().Count(c => c == '\n'));
        Assert.NotNull(bag.ToSnippets());
        using var json = JsonDocument.Parse(bag.ToJson());
        Assert.Equal(bag.Count, json.RootElement.GetArrayLength());
    }

    private static void AssertPlaces(YamlNode node)
    {
        AssertInside(node.Span);
        switch (node)
        {
            case YamlScalar text:
                for (var i = 0; i <= text.Text.Length; i++)
                    Assert.InRange(text.SourceOffset(i), text.Span.Offset, Math.Max(text.Span.End, text.Span.Offset));
                break;
            case YamlSequence list:
                Assert.All(list.Items, AssertPlaces);
                break;
            case YamlMapping map:
                Assert.All(map.Entries, entry => AssertPlaces(entry.Key));
                Assert.All(map.Entries, entry => AssertPlaces(entry.Value));
                break;
        }
    }

    private static void AssertInside(SourceSpan span)
    {
        Assert.InRange(span.Offset, 0, span.File!.Text.Length);
        Assert.InRange(span.End, span.Offset, span.File.Text.Length);
    }
}
