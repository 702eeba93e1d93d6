using System.Text.Json;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>The <c>schedule</c> command.</summary>
public class ScheduleCommandTests
{
    private static readonly string Order = RepositoryFiles.PathOf("samples", "jobs", "oil-pan.yaml");
    private static readonly string Shop = RepositoryFiles.PathOf("samples", "shop.yaml");

    [Fact]
    public void Schedule_InTheDemoShop_TellsWhoDoesWhatWhenWithinEightyColumns()
    {
        var (exit, output, error) = RunHost.With("schedule", Order, "--shop", Shop, "--start", "2026-11-25T08:00");

        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80 && line == line.TrimEnd(), line));
        Assert.Contains("Begins   Wed 25 Nov 08:00", output, StringComparison.Ordinal);
        Assert.Contains("THURSDAY 26 NOVEMBER 2026", output, StringComparison.Ordinal);
        Assert.Contains("T1+T2", output, StringComparison.Ordinal);
        Assert.Contains("Nobody else works on the vehicle meanwhile.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Schedule_OneTechnicianForATwoPersonStep_AsksForAHelper()
    {
        var (_, output, _) = RunHost.With("schedule", Order, "--start", "2026-11-25");

        Assert.Contains("with 1 helper", output, StringComparison.Ordinal);
        Assert.Contains("a helper for step", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Schedule_AsJson_HasTheTimesOfEachStep()
    {
        var (exit, output, _) = RunHost.With("schedule", Order, "--technicians", "2", "--start", "2026-11-28 07:00", "--format", "json");

        Assert.Equal(0, exit);
        using var json = JsonDocument.Parse(output);
        // The 28th is a Saturday.
        Assert.Equal("2026-11-30T08:00:00", json.RootElement.GetProperty("start").GetString());
        Assert.Equal(2, json.RootElement.GetProperty("technicians").GetInt32());
        Assert.Equal("2026-11-30T08:00:00", json.RootElement.GetProperty("steps")[0].GetProperty("start").GetString());
    }

    [Theory]
    [InlineData("--technicians", "0", "--technicians takes 1 to 20")]
    [InlineData("--technicians", "21", "--technicians takes 1 to 20")]
    [InlineData("--start", "tomorrow", "--start 'tomorrow' is not a date and time such as 2026-11-25T08:00")]
    public void Schedule_OptionThatCannotBe_IsExplained(string option, string value, string expected)
    {
        var (exit, _, error) = RunHost.With("schedule", Order, option, value);

        Assert.Equal(1, exit);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Schedule_ShopThatIsAWorkOrder_IsAMistake()
    {
        var (exit, _, error) = RunHost.With("schedule", Order, "--shop", Order);

        Assert.Equal(2, exit);
        Assert.Contains("a work order", error, StringComparison.Ordinal);
    }
}
