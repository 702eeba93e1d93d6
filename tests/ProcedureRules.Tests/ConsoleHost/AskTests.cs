using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>The interview, from piped answers.</summary>
public class AskTests
{
    [Fact]
    public void Ask_WithAnswers_AsksUntilNothingLeftCanChangeThePlan()
    {
        var (exit, output, error) = RunHost.Asking("2.5 in\n3 in\n\n\n\n\n\n\n\n\n\n\n\n", "ask", Order("oil-pan"));
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.Contains("  1. ", output, StringComparison.Ordinal);
        Assert.Contains("Nothing else can change the plan.\n", output, StringComparison.Ordinal);
        Assert.Contains("\nStill open: ", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Theory]
    [InlineData("oil-pan")]
    [InlineData("battery")]
    [InlineData("starter")]
    [InlineData("oil-change")]
    [InlineData("fan-clutch")]
    public void Ask_OnTheDemoJobs_SettlesWithinTwelveQuestions(string order)
    {
        var (exit, output, _) = RunHost.Asking(string.Concat(Enumerable.Repeat("\n", 40)), "ask", Order(order));
        Assert.Equal(0, exit);
        Assert.DoesNotContain("\n 13. ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_WithAnAnswerThatIsWrong_SaysSoAndTakesTheNextLine()
    {
        var (exit, output, error) = RunHost.Asking("60 Nm\n\n", "ask", Order("oil-pan"));
        Assert.Equal(0, exit);
        Assert.Contains("a length is due, not a torque", error, StringComparison.Ordinal);
        Assert.Contains("  2. ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_WithoutAnyAnswer_EndsWithThePlanAsItIs()
    {
        var (exit, output, _) = RunHost.Asking("", "ask", Order("oil-pan"));
        Assert.Equal(0, exit);
        Assert.Contains($"The plan has {Shipped.Plan("oil-pan").Steps.Count} steps", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_WithSave_WritesASheetThatGivesTheSamePlan()
    {
        using var folder = new TemporaryFolder();
        var path = folder.Write("saved.yaml", "");
        var (exit, output, _) = RunHost.Asking("2.5 in\n3 in\n", "ask", Order("oil-pan"), "--save", path);
        Assert.Equal(0, exit);
        Assert.Contains($"Saved {path}.", output.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);

        var again = RunHost.With("plan", Order("oil-pan"), "--vehicle", path);
        Assert.Equal("", again.Error);
        Assert.Equal(0, again.Exit);
        Assert.Contains(output.Split("The plan has ")[1].Split(" of labour")[0].Replace(", ", " steps, ", StringComparison.Ordinal).Split(" steps, ")[^1], again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_WithSaveWhereNothingCanBeWritten_CouldNotRun()
    {
        using var folder = new TemporaryFolder();
        var (exit, _, error) = RunHost.Asking("", "ask", Order("oil-pan"), "--save", Path.Combine(Path.GetDirectoryName(folder.Write("x", ""))!, "none", "sheet.yaml"));
        Assert.Equal(1, exit);
        Assert.Contains("could not be written", error, StringComparison.Ordinal);
    }

    private static string Order(string name) => RepositoryFiles.PathOf("samples", "jobs", name + ".yaml");
}
