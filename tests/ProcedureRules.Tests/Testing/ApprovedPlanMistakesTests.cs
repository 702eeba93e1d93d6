using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;
using ProcedureRules.Testing.Approving;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What is wrong with a file of approved plans is told at its line.</summary>
public class ApprovedPlanMistakesTests
{
    private const string Path = "approved/pan.txt";
    private const string Narrow = "{row: narrow, with: {gap: 1 in}, expect: [ {danger: Mind} ]}";
    private const string Wide = "{row: wide, with: {gap: 4 in}, expect: [ {no_danger: Mind} ]}";

    [Fact]
    public void Plan_OfNoCase_IsAnErrorToldOnce()
    {
        var set = ScenarioSet.Read(TinyPack.Engine, [TinyPack.Scenario(Narrow)], [new SourceFile(Path, Print(Narrow, Wide))]);

        Assert.Equal("approved/pan.txt:23:4: error PR0905: no case has a plan called 'wide'", Assert.Single(set.Diagnostics).ToLine());
    }

    [Theory]
    [InlineData("== narrow\nlabour\n== narrow\nlabour\n", "approved/pan.txt:3:4: error PR0905: the plan 'narrow' is here twice")]
    [InlineData("== narrow\nlike: none\n", "approved/pan.txt:1:4: error PR0905: the plan 'narrow' is told against 'none', which is not told in full before it")]
    public void File_ThatCannotBeRead_IsToldOfAtItsLine(string text, string mistake)
    {
        var set = ScenarioSet.Read(TinyPack.Engine, [TinyPack.Scenario(Narrow)], [new SourceFile(Path, text)]);

        Assert.Equal(mistake, Assert.Single(set.Diagnostics).ToLine());
    }

    [Fact]
    public void Scope_OfANameThatNoCaseHas_IsAnError()
    {
        var cases = ScenarioSet.Read(TinyPack.Engine, [TinyPack.Scenario(Narrow, Wide)]).Cases;
        var mistakes = ApprovalScope.Of([cases[0].Name, cases[0].Scenario, "held", $"{cases[0].Scenario}: norrow"]).Mistakes(cases);

        Assert.Equal(
            $"approve:1:1: error PR0906: no case and no scenario is called '{cases[0].Scenario}: norrow'; did you mean '{cases[0].Name}'?", Assert.Single(mistakes).ToLine());
    }

    private static string Print(params string[] rows) =>
        ApprovedFile.Write("pan.yaml", ApprovedRun.Of(ScenarioSet.Read(TinyPack.Engine, [TinyPack.Scenario(rows)]).Cases, _ => true, TestContext.Current.CancellationToken).SelectMany(run => run.Plans));
}
