using ProcedureRules.Planning;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The vehicles and work orders of the reference give plans.</summary>
public class ReferencePlanTests
{
    [Fact]
    public void Page_VehicleAndOrder_GiveAPlan()
    {
        var result = Planner.Plan(ReferencePage.Instance.Beliefs, TestContext.Current.CancellationToken);

        Assert.Equal("", string.Join('\n', result.Diagnostics.Select(diagnostic => diagnostic.ToSnippet())));
        Assert.Empty(result.Plan!.Stops);
        Assert.Contains(result.Plan.Steps, step => step.Text.In(UnitSystem.Us) == "Fit the oil pan");
    }
}
