using ProcedureRules.ConsoleHost;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary><c>test</c> and <c>coverage</c>: what they print and how they end.</summary>
public sealed class TestCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _rules;

    public TestCommandTests()
    {
        _rules = Path.GetDirectoryName(_folder.Write(TankBench.File, TankBench.Pack))!;
        Directory.CreateDirectory(Path.Combine(_rules, "scenarios"));
    }

    [Theory]
    [InlineData("step: empty_tank", 0, "1 case of 1 scenario, 1 expectation: all passed.")]
    [InlineData("no_step: empty_tank", 2, "1 case of 1 scenario, 1 expectation: 1 failed.")]
    [InlineData("step: emty_tank", 1, "did you mean 'empty_tank'?")]
    public void Test_OfAFolder_EndsWithWhatCame(string expectation, int exit, string printed)
    {
        Write(expectation);
        var run = RunHost.With("test", _rules);

        Assert.Equal(exit, run.Exit);
        Assert.Contains(printed, run.Output + run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Test_WithoutScenarios_CouldNotRun()
    {
        var run = RunHost.With("test", _rules);

        Assert.Equal(1, run.Exit);
        Assert.Contains("there are no scenarios", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("RINSING", 0)]
    [InlineData("one.yaml", 0)]
    [InlineData("nothing like it", 1)]
    public void Test_WithAFilter_RunsWhatFits(string filter, int exit)
    {
        Write("step: empty_tank");

        Assert.Equal(exit, RunHost.With("test", _rules, "--filter", filter).Exit);
    }

    [Theory]
    [InlineData("json", "\"cases\": 1")]
    [InlineData("junit", "<testsuites tests=\"1\" failures=\"0\" errors=\"0\"")]
    public void Test_InAnotherFormat_WritesIt(string format, string printed)
    {
        Write("step: empty_tank");

        Assert.Contains(printed, RunHost.With("test", _rules, "--format", format).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text", "all, over 1 case: rules 0 of 0 (100 %), conditions 0 of 0 (100 %),")]
    [InlineData("html", "<h1>What the scenarios reach of the packs</h1>")]
    [InlineData("json", "\"conditionsSeenBothWays\": 0")]
    public void Coverage_OfAFolder_PrintsSums(string format, string printed)
    {
        Write("step: empty_tank");
        var run = RunHost.With("coverage", _rules, "--format", format, "--threshold", "100");

        Assert.Equal(0, run.Exit);
        Assert.Contains(printed, run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Coverage_BelowTheThreshold_EndsWithTwo()
    {
        _folder.Write(TankBench.File, TankBench.Pack + "\n" + """
            facts: {tank.rusty: {type: yes_no, ask: "Is the {it} rusty?"}}
            rules:
              - {rule: rust, for: {s: step}, when: [ s does fill_tank, tank.rusty is yes ], then: [ {notice: Look for leaks} ], because: Rust eats through., basis: common practice}
            """);
        Write("step: empty_tank");
        Assert.Equal(2, RunHost.With("coverage", _rules, "--threshold", "100").Exit);
        Assert.Equal(0, RunHost.With("coverage", _rules, "--threshold", "0").Exit);
    }

    [Fact]
    public void Test_OfPacksWithMistakes_CouldNotRun() =>
        Assert.Equal(1, RunHost.With("test", RepositoryFiles.PathOf("samples", "no-such-folder")).Exit);

    [Theory]
    [InlineData("check", 2)]
    [InlineData("lint", 1)]
    [InlineData("test", 1)]
    [InlineData("coverage", 1)]
    [InlineData("mutate", 1)]
    public void Command_GivenAFile_NamesTheFolderThatIsDue(string command, int exit)
    {
        Write("step: empty_tank");
        var run = RunHost.With(command, Path.Combine(_rules, "scenarios", "one.yaml"));

        Assert.Equal(exit, run.Exit);
        Assert.Contains("a folder of packs is due here, and this is a file", run.Error, StringComparison.Ordinal);
        Assert.Contains($"name their folder, '{Path.GetRelativePath(Environment.CurrentDirectory, _rules).Replace('\\', '/')}'", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Test_Watching_RunsAgainUponEachChangeUntilItIsEnded()
    {
        Write("step: emty_tank");
        using var changes = new GivenChanges([() => Write("no_step: empty_tank"), () => Write("step: empty_tank")]);
        var run = RunHost.Watching(changes, "test", _rules, "--watch");

        Assert.Equal(0, run.Exit);
        string[] printed = ["did you mean 'empty_tank'?", "1 expectation: 1 failed.", "1 expectation: all passed."];
        Assert.All(printed, line => Assert.Contains(line, run.Output + run.Error, StringComparison.Ordinal));
        Assert.Equal(3, run.Error.Split("Waiting for a change").Length - 1);
    }

    [Fact]
    public async Task Changes_OfYamlFiles_AreToldOnceForSeveralWritesAndOthersAreNot()
    {
        using var changes = new YamlChanges(_rules);
        var next = changes.Next(TestContext.Current.CancellationToken);
        _folder.Write("notes.txt", "nothing");
        Assert.NotSame(next, await Task.WhenAny(next, Task.Delay(300, TestContext.Current.CancellationToken)));
        Write("step: empty_tank");
        Write("no_step: empty_tank");
        await next;

        using var soon = new CancellationTokenSource(300);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => changes.Next(soon.Token));
    }

    public void Dispose() => _folder.Dispose();

    private void Write(string expectation) => _folder.Write(Path.Combine("scenarios", "one.yaml"), TankBench.Scenario("Rinsing", expectation));
}
