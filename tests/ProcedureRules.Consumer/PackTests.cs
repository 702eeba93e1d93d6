using ProcedureRules.Testing.Xunit;
using Xunit;

namespace ProcedureRules.Consumer;

/// <summary>All that somebody writes who proves a pack in a build of their own.</summary>
public class PackTests
{
    [Scenarios("rules")]
    public void Scenario_OfEveryRow_Passes(ScenarioTest test) => test.Verify(TestContext.Current.CancellationToken);
}
