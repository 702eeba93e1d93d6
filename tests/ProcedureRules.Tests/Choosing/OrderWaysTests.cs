using ProcedureRules.Tests.ConsoleHost;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Choosing;

/// <summary>Ways that a work order fixes.</summary>
public sealed class OrderWaysTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Open_OrderThatFixesAWay_PlansAsIfItWereChosen()
    {
        var session = Open("vehicle.height: raise_on_stands");
        var chosen = Shipped.Open("oil-pan");
        chosen.Choose("vehicle.height=raise_on_stands");

        var choice = Assert.Single(Shipped.PlanOf(session).Choices, choice => choice.Id == "vehicle.height");

        Assert.True(choice.IsFixed);
        Assert.Equal(Shipped.PlanOf(chosen).Steps.Select(step => step.Id), Shipped.PlanOf(session).Steps.Select(step => step.Id));
    }

    [Theory]
    [InlineData("vehicle.hight: raise_on_lift", "5:3: error PR0706: nothing is chosen here by the name of 'vehicle.hight'; did you mean 'vehicle.height'?")]
    [InlineData("vehicle.height: raise_on_lfit", "5:19: error PR0706: 'vehicle.height' has no way 'raise_on_lfit'; did you mean 'raise_on_lift'?")]
    [InlineData("vehicle.height: [raise_on_lift]", "5:19: error PR0103: a way is expected here, this is a list")]
    public void Open_OrderWithAMisspeltWay_SaysWhereAndTheNearest(string way, string message)
    {
        var opened = Shipped.Engine.Open(Write(way));

        Assert.Null(opened.Session);
        Assert.EndsWith(message, Assert.Single(opened.Diagnostics).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_OrderWithAWayOfASettledChoice_WarnsAndPlans()
    {
        var opened = Shipped.Engine.Open(Write("engine.height: raise_engine"));

        Assert.EndsWith(
            "5:3: warning PR0707: 'engine.height' does not come up as things stand: the way fixed for it is not used",
            Assert.Single(opened.Diagnostics).ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(Shipped.PlanOf(opened.Session!).Steps);
    }

    [Fact]
    public void LeaveChoices_OfAnOrderThatFixesAWay_LeavesItToThePlanner()
    {
        var session = Open("vehicle.height: raise_on_stands");

        session.LeaveChoices();

        Assert.Equal(Shipped.Plan("oil-pan").Steps.Select(step => step.Id), Shipped.PlanOf(session).Steps.Select(step => step.Id));
        Assert.Empty(session.Situation.Ways);
    }

    [Fact]
    public void Choose_TheSameChoiceTwice_KeepsTheLast()
    {
        var session = Open("vehicle.height: raise_on_stands");

        Assert.Empty(session.Choose("vehicle.height=raise_on_lift"));

        Assert.Equal("vehicle.height=raise_on_lift", Assert.Single(session.Situation.Ways).ToString());
        Assert.Contains(Shipped.PlanOf(session).Steps, step => step.Step.Operation.Name == "raise_on_lift");
    }

    [Fact]
    public void Ask_WithSaveOrder_WritesAnOrderThatGivesTheSamePlan()
    {
        var (sheet, order) = (_folder.Write("sheet.yaml", ""), _folder.Write("order.yaml", ""));
        var (exit, _, error) = RunHost.Asking(
            "2.5 in\n3 in\n", "ask", RepositoryFiles.PathOf("samples", "jobs", "oil-pan.yaml"), "--choose", "vehicle.height=raise_on_stands", "--save", sheet, "--save-order", order);

        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("choose:\n  vehicle.height: raise_on_stands\n", File.ReadAllText(order), StringComparison.Ordinal);
        var again = Shipped.Engine.Open(order);
        Assert.Empty(again.Diagnostics);
        Assert.Contains(Shipped.PlanOf(again.Session!).Choices, choice => choice.IsFixed);
    }

    [Fact]
    public void Ask_WithSaveOrderAlone_SaysWhatIsMissing() =>
        Assert.Contains("give --save, too", RunHost.Asking("", "ask", RepositoryFiles.PathOf("samples", "jobs", "oil-pan.yaml"), "--save-order", "x.yaml").Error, StringComparison.Ordinal);

    private ProcedureSession Open(string way)
    {
        var opened = Shipped.Engine.Open(Write(way));
        Assert.True(opened.Session is not null, string.Concat(opened.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return opened.Session!;
    }

    private string Write(string way)
    {
        var shipped = File.ReadAllText(RepositoryFiles.PathOf("samples", "jobs", "oil-pan.yaml"));
        return _folder.Write("order.yaml",
            $"work_order: Pan\nvehicle: {RepositoryFiles.PathOf("samples", "vehicles", "demo-sedan-a.yaml")}\njobs: [ replace_oil_pan ]\nchoose:\n  {way}\n{shipped[shipped.IndexOf("facts:", StringComparison.Ordinal)..]}");
    }
}
