using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Json.Schema;
using ProcedureRules.Diagnostics;
using ProcedureRules.Shapes;
using ProcedureRules.Tests.Yaml;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Shapes;

/// <summary>Checked against JsonSchema.Net, which implements JSON Schema draft-07 (https://json-schema.org/draft-07).</summary>
public class SchemaWriterTests
{
    private static readonly string Text = SchemaWriter.Write(SmallShape.Root, "https://example.invalid/small.json", "Small");
    private static readonly JsonSchema Schema = JsonSchema.FromText(Text);

    [Fact]
    public void Write_SmallShape_IsAValidDraft07Schema()
    {
        using var document = JsonDocument.Parse(Text);

        Assert.True(MetaSchemas.Draft7.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void Write_Twice_GivesTheSameTextWithLineFeeds()
    {
        Assert.Equal(Text, SchemaWriter.Write(SmallShape.Root, "https://example.invalid/small.json", "Small"));
        Assert.DoesNotContain('\r', Text);
        Assert.EndsWith("}\n", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_MapWithReference_ReadsLikeThis()
    {
        var name = new RefShape("name", () => new TextShape { Pattern = new("[a-z]+", "letters"), Examples = ["pan"] });
        var shape = new MapShape(
            "a part",
            Field.Required("part", name, "Which part."),
            Field.Optional("hot", new YesNoShape(), "Whether it is hot.", "no"));

        Assert.Equal(
            """
            {
              "$schema": "http://json-schema.org/draft-07/schema#",
              "$id": "https://example.invalid/part.json",
              "title": "Part",
              "type": "object",
              "properties": {
                "part": {
                  "description": "Which part.",
                  "allOf": [
                    {
                      "$ref": "#/definitions/name"
                    }
                  ]
                },
                "hot": {
                  "description": "Whether it is hot. Default: no.",
                  "enum": [
                    "yes",
                    "no",
                    true,
                    false
                  ]
                }
              },
              "required": [
                "part"
              ],
              "additionalProperties": false,
              "definitions": {
                "name": {
                  "type": [
                    "string",
                    "number",
                    "boolean"
                  ],
                  "pattern": "^(?:[a-z]+)$",
                  "examples": [
                    "pan"
                  ]
                }
              }
            }

            """.ReplaceLineEndings("\n"),
            SchemaWriter.Write(shape, "https://example.invalid/part.json", "Part"));
    }

    [Theory]
    [InlineData("pack: bottom_end", true)]
    [InlineData("pack: 12\ndraft: true\nplace: 2\nparts: {a: 1, b: x, c: true}", true)]
    [InlineData("pack: a\nthen: [x, {need: y}, {one_of: [x, {one_of: [a, b]}]}]", true)]
    [InlineData("pack: Bottom End", false)]
    [InlineData("pack: a\nplce: under", false)]
    [InlineData("place: under", false)]
    [InlineData("pack: a\nplace: roof", false)]
    [InlineData("pack: a\ndraft: maybe", false)]
    [InlineData("pack: a\nparts: {Oil Pan: x}", false)]
    [InlineData("pack: a\nthen: []", false)]
    [InlineData("pack: a\nthen: [{need: x, rank: 10}]", false)]
    [InlineData("pack: a\nthen: [{one_of: [x, {one_of: [a]}]}]", false)]
    [InlineData("pack: ~", false)]
    public void Write_Document_IsJudgedByTheSchemaAsByTheCheck(string yaml, bool isRight)
    {
        Assert.Equal((isRight, isRight), (CheckAccepts(yaml), SchemaAccepts(yaml)));
    }

    [Property(MaxTest = 1000)]
    public Property Write_RandomDocument_IsJudgedByTheSchemaAsByTheCheck() =>
        Prop.ForAll(Arb.From(Document(3)), yaml => Assert.Equal(CheckAccepts(yaml), SchemaAccepts(yaml)));

    // The right keys, mostly with a value of the right kind: about one document in five is right.
    private static Gen<string> Document(int depth)
    {
        var scalar = Gen.Elements("a", "bottom_end", "'Big Name'", "2", "10", "1.5", "yes", "true", "under", "~", "-1");
        var value = depth == 0 ? scalar : Gen.Frequency((3, scalar), (1, List(depth)), (1, Map(depth)));
        var then = depth == 0 ? scalar : List(depth);
        var parts = Gen.Zip(Gen.Elements("a", "b_2", "'C d'"), value).Select(pair => $"{{{pair.Item1}: {pair.Item2}}}");
        var fields = new[]
        {
            Gen.Elements("a", "b", "c", "d", "2", "'B'").Select(text => $"pack: {text}"),
            Gen.Elements("under", "bay", "2", "'2'", "roof").Select(text => $"place: {text}"),
            Gen.Elements("yes", "no", "true", "false", "maybe").Select(text => $"draft: {text}"),
            parts.Select(text => $"parts: {text}"),
            then.Select(text => $"then: {text}"),
            value.Select(text => $"other: {text}"),
        };
        return Gen.SubListOf(Enumerable.Range(1, fields.Length - 1))
            .SelectMany(chosen => Gen.CollectToList(chosen.Where(i => i < 5 || chosen.Count < 3).Prepend(chosen.Count == 4 ? 1 : 0).Distinct(), i => fields[i]))
            .Select(all => $"{{{string.Join(", ", all)}}}");
    }

    private static Gen<string> List(int depth) =>
        Gen.Choose(0, 3).SelectMany(count => Gen.ListOf(Item(depth - 1), count)).Select(items => $"[{string.Join(", ", items)}]");

    private static Gen<string> Map(int depth)
    {
        var need = Gen.Zip(Gen.Elements("a", "b", "c", "2", "~", "[a]"), Gen.Elements("", "", ", rank: 1", ", rank: 2", ", rank: 10", ", rank: x", ", one_of: [a, b]"));
        return depth == 0
            ? need.Select(pair => $"{{need: {pair.Item1}{pair.Item2}}}")
            : Gen.OneOf(need.Select(pair => $"{{need: {pair.Item1}{pair.Item2}}}"), List(depth).Select(list => $"{{one_of: {list}}}"));
    }

    private static Gen<string> Item(int depth) =>
        depth <= 0 ? Gen.Elements("a", "b", "c", "2", "3", "~") : Gen.OneOf(Gen.Elements("a", "true"), Map(depth));

    private static bool CheckAccepts(string yaml)
    {
        var bag = new DiagnosticBag();
        ShapeChecker.Check(Read.Clean<YamlMapping>(yaml), SmallShape.Root, bag);
        return !bag.HasErrors;
    }

    private static bool SchemaAccepts(string yaml)
    {
        var json = YamlToJson.Convert(Read.Clean<YamlMapping>(yaml));
        using var document = JsonDocument.Parse(json!.ToJsonString());
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
