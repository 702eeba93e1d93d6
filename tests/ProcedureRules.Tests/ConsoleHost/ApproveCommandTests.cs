using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary><c>test --approve</c>: which files it prints, and what it leaves alone.</summary>
public sealed class ApproveCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public ApproveCommandTests()
    {
        _folder.Write(TankBench.File, TankBench.Pack);
        Write("one", "step: empty_tank");
        Write("two", "step: fill_tank");
    }

    [Fact]
    public void Approve_All_HoldsEveryCaseUntilAWordChanges()
    {
        Assert.Equal(0, Test("--approve", "all").Exit);
        Assert.Contains("2 cases of 2 scenarios, 4 expectations: all passed.", Test().Output, StringComparison.Ordinal);
        Assert.Contains("Every approved plan is as it was.", Test("--approve", "held").Output, StringComparison.Ordinal);

        _folder.Write(TankBench.File, TankBench.Pack.Replace("\"Empty the {it}\"", "\"Tip the {it} out\"", StringComparison.Ordinal));
        var changed = Test();
        Assert.Equal(2, changed.Exit);
        Assert.Contains("+ step empty_tank(tank): Tip the tank out", changed.Output, StringComparison.Ordinal);

        Assert.Equal(0, Test("--approve", "held").Exit);
        Assert.Equal(0, Test().Exit);
    }

    [Fact]
    public void Approve_WithAFilter_LeavesTheOthersAlone()
    {
        Assert.Equal(0, Test("--approve", "all", "--filter", "one.yaml").Exit);
        Assert.Equal(0, Test("--approve", "held").Exit);

        Assert.True(File.Exists(Approved("one")));
        Assert.False(File.Exists(Approved("two")));
    }

    [Fact]
    public void Approve_ByNames_PrintsThoseInOneRunAndLeavesTheOthersAlone()
    {
        _folder.Write("scenarios/rows.yaml", "scenario: Rinsing rows\nvehicle: {parts: {tank: tank}}\njobs: [ rinse ]\nexpect: [ {step: empty_tank} ]\nrows: [ {row: here}, {row: there} ]\n");
        var run = Test("--approve", "Rinsing two", "--approve", "Rinsing rows: there");

        Assert.Equal(0, run.Exit);
        Assert.Equal(2, run.Output.Split("printed ").Length - 1);
        Assert.False(File.Exists(Approved("one")));
        Assert.True(File.Exists(Approved("two")));
        Assert.Contains("== there\n", File.ReadAllText(Approved("rows")), StringComparison.Ordinal);
        Assert.DoesNotContain("== here\n", File.ReadAllText(Approved("rows")), StringComparison.Ordinal);

        Assert.Equal(0, Test("--approve", "Rinsing rows").Exit);
        Assert.Contains("== here\n", File.ReadAllText(Approved("rows")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Rinsing tow", "approve:1:1: error PR0906: no case and no scenario is called 'Rinsing tow'; did you mean 'Rinsing two'?")]
    [InlineData("hold", "approve:1:1: error PR0906: no case and no scenario is called 'hold'; did you mean 'held'?")]
    [InlineData("something else altogether", "approve:1:1: error PR0906: no case and no scenario is called 'something else altogether'")]
    public void Approve_OfANameThatNoCaseHas_TellsTheNearestAndPrintsNothing(string name, string told)
    {
        var run = Test("--approve", "Rinsing one", "--approve", name);

        Assert.Equal(1, run.Exit);
        Assert.Contains(told + "\n", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Approved("one")));
    }

    [Fact]
    public void Approve_OfACaseThatFails_PrintsNothing()
    {
        Write("one", "no_step: empty_tank");
        var run = Test("--approve", "all");

        Assert.Equal(2, run.Exit);
        Assert.Contains("no_step: empty_tank", run.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.GetDirectoryName(Approved("one"))));
    }

    [Fact]
    public void Approve_WhereAnotherHeldCaseDiffers_PrintsNothing()
    {
        Test("--approve", "all");
        var before = File.ReadAllText(Approved("one"));
        _folder.Write(TankBench.File, TankBench.Pack.Replace("\"Empty the {it}\"", "\"Tip the {it} out\"", StringComparison.Ordinal));
        var run = Test("--approve", "held", "--filter", "one.yaml");

        Assert.Equal(2, run.Exit);
        Assert.Contains("two.yaml", run.Output, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Approved("one")));
    }

    [Fact]
    public void Approve_AfterAScenarioIsGone_CuresWhatTestTells()
    {
        Test("--approve", "all");
        File.Delete(Path.Combine(_folder.Root, "scenarios", "two.yaml"));
        var stale = Test();
        Assert.Equal(1, stale.Exit);
        Assert.Contains("error PR0905: there are no scenarios that these plans could be of", stale.Error, StringComparison.Ordinal);

        Assert.Equal(0, Test("--approve", "held").Exit);
        Assert.False(File.Exists(Approved("two")));
        Assert.Equal(0, Test().Exit);
    }

    [Fact]
    public void Approve_OfScenariosThatCannotBeRead_CouldNotRun()
    {
        Write("one", "step: emty_tank");
        var run = Test("--approve", "all");

        Assert.Equal(1, run.Exit);
        Assert.Contains("did you mean 'empty_tank'?", run.Error, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private string Approved(string name) => Path.Combine(_folder.Root, "scenarios", "approved", $"{name}.txt");

    private (int Exit, string Output, string Error) Test(params string[] options)
    {
        var run = RunHost.With(["test", _folder.Root, .. options]);
        return (run.Exit, run.Output, run.Error);
    }

    private void Write(string name, string expectation) => _folder.Write(Path.Combine("scenarios", $"{name}.yaml"), TankBench.Scenario($"Rinsing {name}", expectation));
}
