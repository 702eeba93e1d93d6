using System.Text.Json;
using ProcedureRules.ConsoleHost;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>The general torque chart as a person or a script meets it.</summary>
public class TableTorqueTests
{
    [Fact]
    public void Torque_OfABolt_IsLabelledAsAGeneralChartWithItsCautionsAndSources()
    {
        var (exit, output, error) = Run("--grade", "5", "--size", "3/8-16");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        foreach (var words in new[] { "general chart", "the maker's figure goes first", "Never for bolts that are used once", "SAE J429", "zinc" })
            Assert.Contains(words, output, StringComparison.Ordinal);
    }

    [Fact]
    public void Torque_WithANutFactorAsJson_IsThePublishedFigure()
    {
        // Source: a published bolt torque table for SAE J429, 3/8-16 grade 5 at K 0.20: 31 lb.ft, rounded.
        var (_, output, _) = Run("--grade", "5", "--size", "3/8-16", "--friction", "0.2", "--format", "json");
        using var json = JsonDocument.Parse(output);
        Assert.Equal(31, Math.Round(Assert.Single(json.RootElement.GetProperty("rows").EnumerateArray()).GetProperty("lbft").GetDouble()));
    }

    [Fact]
    public void Torque_OfAStainlessBolt_HasOnlyTheFactorOfStainless()
    {
        var (exit, output, _) = Run("--grade", "A2-70", "--size", "M8x1.25");
        Assert.Equal(0, exit);
        Assert.Contains("stainless", output, StringComparison.Ordinal);
        Assert.DoesNotContain("zinc", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("9", "3/8-16", "0.2", "no strength of '9' is known")]
    [InlineData("5", "3/8", "0.2", "the threads per inch are due")]
    [InlineData("5", "M8", "0.2", "grade 5 is for inch bolts")]
    [InlineData("5", "3/8-16", "2", "a nut factor is a number from 0.05 to 1")]
    [InlineData("5", "3/8-16", "dry", "a nut factor is a number from 0.05 to 1")]
    public void Torque_OfWhatIsNotKnown_SaysWhatIsDue(string grade, string size, string friction, string message)
    {
        var (exit, _, error) = Run("--grade", grade, "--size", size, "--friction", friction);
        Assert.Equal(2, exit);
        Assert.Contains(message, error, StringComparison.Ordinal);
    }

    private static (int Exit, string Output, string Error) Run(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = Host.Run(["table", "torque", .. args], new HostConsole(output, error, null, 80));
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }
}
