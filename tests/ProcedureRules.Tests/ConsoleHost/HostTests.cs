using System.Text.Json;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>The console host as a person or a script meets it.</summary>
public class HostTests
{
    [Fact]
    public void Run_WithoutArguments_PlansTheDemoWithinEightyColumnsAndWithoutColour()
    {
        var (exit, output, error) = Run();
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.DoesNotContain('\u001b', output);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Raise the engine", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfAVehicleSheet_SaysThatNoJobIsAskedFor()
    {
        var (exit, output, _) = Run("plan", RepositoryFiles.PathOf("samples", "vehicles", "demo-sedan-a.yaml"));
        Assert.Equal(0, exit);
        Assert.StartsWith("No job is asked for: a work order names this sheet under 'vehicle'", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_AsJson_HasTheStepsOfTheText()
    {
        var (exit, output, _) = Run("plan", Order("oil-pan"), "--format", "json");
        Assert.Equal(0, exit);
        using var json = JsonDocument.Parse(output);
        Assert.Equal(Shipped.Plan("oil-pan").Steps.Select(step => step.Id), json.RootElement.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("id").GetString()));
    }

    [Fact]
    public void Plan_InSiUnits_PrintsNoInches()
    {
        var (_, output, _) = Run("plan", Order("oil-pan"), "--units", "si");
        Assert.Contains("mm", output, StringComparison.Ordinal);
        Assert.DoesNotContain(" in of room", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_WithAStatement_FollowsIt()
    {
        var (exit, output, _) = Run("plan", Order("oil-pan"), "--set", "oil_pan.drop_available=6 in");
        Assert.Equal(0, exit);
        Assert.DoesNotContain("Raise the engine", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_WithAMisspeltStatement_SaysWhereAndWhatIsNear()
    {
        var (exit, _, error) = Run("plan", Order("oil-pan"), "--set", "oil_pan.drop_availible=6 in");
        Assert.Equal(2, exit);
        Assert.Contains("did you mean 'drop_available'?", error, StringComparison.Ordinal);
        Assert.Contains("^", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_OfAnOrder_ShowsWhatWasReadAndWhatFollowsWithItsBasis()
    {
        var (exit, output, error) = Run("readings", Order("oil-pan"));
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.Contains("oil_pan.drop_available: 2 in, measured", output, StringComparison.Ordinal);
        Assert.Contains("exhaust.soak_time: 15 min", output, StringComparison.Ordinal);
        Assert.Contains("[common practice]", output, StringComparison.Ordinal);
        Assert.DoesNotContain("battery.mass", output, StringComparison.Ordinal); // what an archetype assumes was not read
    }

    [Fact]
    public void WhatIf_OfAnotherGap_TellsWhatComesAndGoes()
    {
        var (exit, output, error) = Run("what-if", Order("oil-pan"), "oil_pan.drop_available=6 in");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.Contains("STEPS THAT GO", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void WhatIf_OfAMisspeltFact_IsAMistakeInTheInput()
    {
        var (exit, _, error) = Run("what-if", Order("oil-pan"), "oil_pan.drop_availible=6 in");
        Assert.Equal(2, exit);
        Assert.Contains("did you mean", error, StringComparison.Ordinal);
    }

    [Fact]
    public void WhyNot_OfACaution_TellsTheFactThatWouldBringIt()
    {
        var (exit, output, error) = Run("why-not", Order("oil-pan"), "Left-hand thread");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.Contains("fan.thread: left hand nut", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("raise_engine(engine)", "ask why instead")]
    [InlineData("raise_engin", "did you mean 'raise_engine'?")]
    public void WhyNot_OfWhatIsThereOrNowhere_SaysSo(string item, string words)
    {
        var (exit, _, error) = Run("why-not", Order("oil-pan"), item);
        Assert.Equal(2, exit);
        Assert.Contains(words, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfAFileThatIsNotThere_IsAMistakeInTheInput()
    {
        var (exit, _, error) = Run("plan", "no-such-order.yaml");
        Assert.Equal(2, exit);
        Assert.Contains("no-such-order.yaml", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_AnUnknownOption_CouldNotRun()
    {
        Assert.Equal(1, Run("plan", "--no-such-option").Exit);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("why")]
    [InlineData("check")]
    [InlineData("facts")]
    [InlineData("readings")]
    [InlineData("what-if")]
    [InlineData("ask")]
    [InlineData("why-not")]
    [InlineData("table")]
    public void Help_OfEachCommand_ShowsAnExample(string command)
    {
        var (exit, output, _) = Run(command, "--help");
        Assert.Equal(0, exit);
        Assert.Contains($"Example: procedure-rules {command}", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OfTheShippedPacks_CountsThem()
    {
        var (exit, output, error) = Run("check", RepositoryFiles.PathOf("rules"));
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.Contains("no mistakes", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OfABrokenPack_PrintsEachMistakeWithItsLine()
    {
        var folder = Directory.CreateTempSubdirectory("packs");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "broken.yaml"), "pack: broken\nversion: 1.0.0\nabout: Nothing.\nkindz: {}\n");
            var (exit, _, error) = Run("check", folder.FullName);
            Assert.Equal(2, exit);
            Assert.Contains("broken.yaml:4:1: error", error, StringComparison.Ordinal);
            Assert.Contains("did you mean 'kinds'?", error, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Facts_OfTheDemo_TellsSourcesAndWhatIsOpen()
    {
        var (exit, output, _) = Run("facts", Order("oil-pan"));
        Assert.Equal(0, exit);
        Assert.Contains("oil_pan.drop_available: 2 in, measured", output, StringComparison.Ordinal);
        Assert.Contains("OPEN, AND IT MATTERS", output, StringComparison.Ordinal);
    }

    private static string Order(string name) => RepositoryFiles.PathOf("samples", "jobs", name + ".yaml");

    private static (int Exit, string Output, string Error) Run(params string[] args) => RunHost.With(args);
}
