using ProcedureRules.Testing;
using ProcedureRules.Testing.Xunit;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>The shipped scenarios, each row a case of its own.</summary>
public class ShippedScenariosTests
{
    private static readonly ScenarioSet Set = ScenarioSet.Beside(Shipped.Engine, RepositoryFiles.PathOf("rules"));

    [Fact]
    public void Files_AllOfThem_AreReadWithoutComplaint() =>
        Assert.Equal("", string.Concat(Set.Diagnostics.Select(mistake => mistake.ToSnippet())));

    [Scenarios("rules")]
    public void Scenario_OfEveryRow_Passes(ScenarioTest test) => test.Verify(TestContext.Current.CancellationToken);

    [Fact]
    public void Jobs_EveryShippedOne_HasAScenario()
    {
        var asked = Set.Cases.SelectMany(one => one.Situation.Jobs).Select(job => job.Job.Name);

        Assert.Empty(Shipped.Engine.Vocabulary.Jobs.Keys.Except(asked));
    }
}
