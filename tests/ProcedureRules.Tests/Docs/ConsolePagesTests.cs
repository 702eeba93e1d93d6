using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The command lines of the pages print what the pages say. They need a working folder, so nothing runs beside them.</summary>
[Collection(nameof(WorkingFolder))]
public class ConsolePagesTests
{
    [Fact]
    public void Readme_EveryCommand_PrintsWhatThePageSays()
    {
        var examples = Examples(MarkdownPage.Load("README.md")).ToList();
        Assert.NotEmpty(examples);
        foreach (var example in examples)
        {
            var lines = WorkingFolder.In(RepositoryFiles.Root, example.Run);
            Assert.True(example.Matches(lines), $"{example.Command}\n{string.Join('\n', lines)}");
        }
    }

    [Fact]
    public void Reference_WalkThatATrainerTypes_PrintsWhatThePageSays()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var page = ReferencePage.Instance;
            foreach (var rules in new[] { "my_rules", "released" })
            {
                Directory.CreateDirectory(Path.Combine(folder.FullName, rules));
                File.WriteAllText(Path.Combine(folder.FullName, rules, "wipers.yaml"), page.WalkPack);
            }

            File.WriteAllText(Path.Combine(folder.FullName, "van.yaml"), page.WalkVehicle);
            File.WriteAllText(Path.Combine(folder.FullName, "job.yaml"), page.WalkOrder);
            foreach (var block in ReferencePage.Page.Blocks)
            {
                if (block.Section == ReferencePage.Proof && block.Language == "yaml") WriteProof(folder.FullName, block);
                if (block.Language != "console") continue;
                var example = ConsoleExample.Of(block);
                var lines = WorkingFolder.In(folder.FullName, example.Run);
                Assert.True(example.Matches(lines), $"{example.Command}\n{string.Join('\n', lines)}");
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Matches_LinesLeftOut_AreAllowedWhereThePageSaysSo()
    {
        var example = new ConsoleExample("$ procedure-rules", ["a", "...", "d"]);

        Assert.True(example.Matches(["a", "b", "c", "d"]));
        Assert.True(example.Matches(["a", "d"]));
        Assert.False(example.Matches(["a", "b"]));
        Assert.False(example.Matches(["a", "d", "e"]));
        Assert.False(new ConsoleExample("$ procedure-rules", ["a", "b"]).Matches(["a", "x", "b"]));
    }

    // A scenario becomes a file of its own; a rule goes into the pack.
    private static void WriteProof(string folder, CodeBlock block)
    {
        var isScenario = block.FirstKey == "scenario";
        var path = Path.Combine(folder, "my_rules", isScenario ? Path.Combine("scenarios", "linkage.yaml") : "wipers.yaml");
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, isScenario ? block.Text : PackFragments.Join([ReferencePage.Instance.WalkPack, block.Text]));
    }

    private static IEnumerable<ConsoleExample> Examples(MarkdownPage page) =>
        page.Blocks.Where(block => block.Language == "console").Select(ConsoleExample.Of);
}
