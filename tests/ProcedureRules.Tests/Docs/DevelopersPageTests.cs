using System.Text.RegularExpressions;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The code of the page for developers is code that compiles and runs.</summary>
[Collection(nameof(WorkingFolder))]
public partial class DevelopersPageTests
{
    private static readonly string[] Compiled = ["tests/ProcedureRules.Tests/Docs/EmbeddingExamples.cs", "tests/ProcedureRules.Consumer/PackTests.cs"];

    [Fact]
    public void Page_EveryCodeBlock_StandsInTheCompiledExamples()
    {
        var compiled = string.Concat(Compiled.Select(path => Flat(File.ReadAllText(RepositoryFiles.PathOf(path.Split('/'))))));
        var blocks = MarkdownPage.Load("DEVELOPERS.md").Blocks.Where(block => block.Language == "csharp").ToList();

        Assert.NotEmpty(blocks);
        Assert.All(blocks, block => Assert.Contains(Flat(block.Text), compiled, StringComparison.Ordinal));
    }

    [Fact]
    public void PlanTwice_OnTheSamples_PrintsStepsAndQuestions()
    {
        var (before, output) = (Console.Out, new StringWriter());
        Console.SetOut(output);
        try
        {
            WorkingFolder.In(RepositoryFiles.Root, () =>
            {
                EmbeddingExamples.PlanTwice();
                return true;
            });
        }
        finally
        {
            Console.SetOut(before);
        }

        Assert.Matches(@"(?m)^  1\. ", output.ToString());
        Assert.DoesNotContain("Raise the engine", output.ToString(), StringComparison.Ordinal);
    }

    private static string Flat(string text) => Blanks().Replace(text, " ").Trim();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
