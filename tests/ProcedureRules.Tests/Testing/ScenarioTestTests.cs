using ProcedureRules.Testing.Xunit;
using ProcedureRules.Tests.Docs;
using ProcedureRules.Tests.Engine;
using Xunit;
using Xunit.Runner.Common;
using Xunit.Sdk;
using Xunit.v3;

namespace ProcedureRules.Tests.Testing;

/// <summary>Scenarios as tests of xUnit.net.</summary>
public class ScenarioTestTests
{
    private const string Twice = GivenScenario.Head + """
        rows:
          - row: goes on
            expect: [ {plan: goes_on} ]
          - row: stops
            expect: [ {plan: stops} ]

        """;

    [Fact]
    public async Task Discover_EveryRow_StandsAtItsLine()
    {
        using var folder = Folder(Twice);
        var tests = await Discover(new ScenariosAttribute(folder.Root));

        Assert.Equal([$"{folder.Root}: packs and scenarios are read", "a pan: goes on", "a pan: stops"], tests.Select(test => test.TestCaseDisplayName));
        Assert.Equal([5, 7], tests.Skip(1).Select(test => test.SourceLineNumber));
        Assert.All(tests.Skip(1), test => Assert.Equal(Path.Combine(folder.Root, "scenarios", "pan.yaml"), test.SourceFilePath));
        Assert.Equal(3, tests.Select(test => test.UniqueID).Distinct().Count());
    }

    [Fact]
    public async Task Discover_WithAFilter_LeavesOutTheOthers()
    {
        using var folder = Folder(Twice);
        var tests = await Discover(new ScenariosAttribute(folder.Root) { Filter = "STOPS" });

        Assert.Equal("a pan: stops", Assert.Single(tests.Skip(1)).TestCaseDisplayName);
    }

    [Fact]
    public void Verify_WhatIsNotAsExpected_ThrowsTheReport()
    {
        using var folder = Folder(Twice);
        new ScenarioTest(folder.Root, "a pan: goes on").Verify(TestContext.Current.CancellationToken);
        var failure = Assert.Throws<ScenarioFailedException>(() => new ScenarioTest(folder.Root, "a pan: stops").Verify(TestContext.Current.CancellationToken));

        Assert.Contains("plan: stops", failure.Message, StringComparison.Ordinal);
        Assert.Contains("it goes on", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("scenario: a pan", "error")]
    [InlineData(Twice + "next: nonsense\n", "error")]
    [InlineData(null, "no scenarios")]
    public async Task Discover_WhatCannotBeRead_LeavesATestThatSaysSo(string? scenario, string said)
    {
        using var folder = Folder(scenario);
        Assert.Single(await Discover(new ScenariosAttribute(folder.Root)));
        var failure = Assert.Throws<ScenarioFailedException>(() => new ScenarioTest(folder.Root, null).Verify(TestContext.Current.CancellationToken));

        Assert.Contains(said, failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_TwoCasesOfOneName_IsToldRatherThanRunOnce()
    {
        using var folder = Folder(Twice);
        folder.Write("scenarios/again.yaml", Twice);
        var failure = Assert.Throws<ScenarioFailedException>(() => new ScenarioTest(folder.Root, null).Verify(TestContext.Current.CancellationToken));

        Assert.Contains("'a pan: stops' stands twice", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_NoSuchFolder_SaysWhereItWasLookedFor()
    {
        var failure = Assert.Throws<ScenarioFailedException>(() => new ScenarioTest("no/such/folder", null).Verify(TestContext.Current.CancellationToken));

        Assert.Contains("no folder 'no/such/folder'", failure.Message, StringComparison.Ordinal);
    }

    private static async Task<IReadOnlyCollection<IXunitTestCase>> Discover(ScenariosAttribute attribute) => await new ScenarioDiscoverer()
        .Discover(TestFrameworkOptions.Empty(), Assert.IsAssignableFrom<IXunitTestMethod>(TestContext.Current.TestMethod), attribute);

    private static TemporaryFolder Folder(string? scenario)
    {
        var folder = new TemporaryFolder();
        folder.Write("bottom_end.yaml", ReferencePage.Instance.Pack);
        if (scenario is not null) folder.Write("scenarios/pan.yaml", scenario);
        return folder;
    }
}
