using ProcedureRules.Testing;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>The shipped scenarios, each row a case of its own.</summary>
public class ShippedScenariosTests
{
    private static readonly ScenarioSet Set = ScenarioSet.Beside(Shipped.Engine, RepositoryFiles.PathOf("rules"));

    private static readonly Dictionary<string, ScenarioCase> ByName = Set.Cases.ToDictionary(one => one.Name);

    public static TheoryData<string> Names => [.. ByName.Keys.Select(name => new TheoryDataRow<string>(name) { TestDisplayName = name })];

    [Fact]
    public void Files_AllOfThem_AreReadWithoutComplaint() =>
        Assert.Equal("", string.Concat(Set.Diagnostics.Select(mistake => mistake.ToSnippet())));

    [Theory]
    [MemberData(nameof(Names))]
    public void Case_OfEveryScenario_Passes(string name)
    {
        var result = ByName[name].Run(TestContext.Current.CancellationToken);

        Assert.NotEmpty(result.Expectations);
        Assert.True(result.Passed, string.Join('\n', TestText.Lines([result], 140).Select(line => line.Text)));
    }

    [Fact]
    public void Jobs_EveryShippedOne_HasAScenario()
    {
        var asked = Set.Cases.SelectMany(one => one.Situation.Jobs).Select(job => job.Job.Name);

        Assert.Empty(Shipped.Engine.Vocabulary.Jobs.Keys.Except(asked));
    }
}
