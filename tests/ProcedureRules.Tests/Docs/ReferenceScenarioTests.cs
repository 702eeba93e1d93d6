using ProcedureRules.Diagnostics;
using ProcedureRules.Shapes;
using ProcedureRules.Testing;
using ProcedureRules.Testing.Scenarios;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The scenarios of the reference hold on the pack of the reference, and show all there is.</summary>
public class ReferenceScenarioTests
{
    private const string Section = "A scenario";

    private static IReadOnlyList<CodeBlock> Blocks => [.. ReferencePage.Page.Blocks.Where(block => block is { Language: "yaml", Section: Section })];

    [Fact]
    public void Page_EveryScenario_Passes()
    {
        var page = ReferencePage.Instance;
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "demo-van.yaml"), page.Vehicle);
            var scenarios = Path.Combine(folder.FullName, "rules", "scenarios");
            var files = Blocks.Select(block => new SourceFile(Path.Combine(scenarios, $"line-{block.Line}.yaml"), block.Text)).ToList();
            var engine = ProcedureEngine.Load([new SourceFile("bottom_end.yaml", page.Pack), new SourceFile("archetypes/rear_drive.yaml", page.Archetype)]).Engine!;
            var set = ScenarioSet.Read(engine, files);

            Assert.Equal("", string.Concat(set.Diagnostics.Select(mistake => mistake.ToSnippet())));
            var results = ScenarioRunner.Run(set.Cases, TestContext.Current.CancellationToken);
            Assert.True(results.All(result => result.Passed), string.Join('\n', TestText.Lines(results, 140).Select(line => line.Text)));
            Assert.Equal(4, results.Count);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Page_EveryKeyOfAScenario_IsShown()
    {
        var used = Blocks.SelectMany(block => ShapeWalk.KeysUsed(YamlReader.Read(new SourceFile("page.yaml", block.Text), new DiagnosticBag())!, ScenarioShapes.Scenario)).ToHashSet();
        MapShape[] maps = [.. ShapeWalk.Maps(ScenarioShapes.Scenario).Where(map => map.Noun is "a scenario" or "a turn" or "a row of a scenario")];

        Assert.Equal(3, maps.Length);
        Assert.Empty(maps.SelectMany(map => map.Fields.Select(field => ShapeWalk.Words(map, field.Name))).Except(used));
    }
}
