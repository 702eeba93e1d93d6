using System.Text.Json;
using ProcedureRules.Testing;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What scenarios reach of the rules.</summary>
public class CoverageTests
{
    private const string Cold = "a starter takes no water";
    private const string Weak = "a weak pan carries no engine";
    private const string Sound = "a sound pan carries an engine";

    [Fact]
    public void Rule_BySeveralCases_IsCountedByCase()
    {
        var report = Report("{row: weak, with: {condition: dented}}", "{row: sound, with: {condition: sound}}", "{row: unknown, with: {condition: unknown}}");

        Assert.Equal((3, 2, 1), (Rule(report, Weak).Matched, Rule(report, Weak).Fired, Rule(report, Weak).Sure));
        Assert.Equal((0, 0), (Rule(report, Cold).Matched, Rule(report, Cold).Fired));
        var condition = Assert.Single(Rule(report, Sound).Conditions);
        Assert.Equal((1, 1, 1), (condition.Yes, condition.No, condition.Unknown));
        Assert.True(condition.IsSettledBothWays);
    }

    [Fact]
    public void Condition_SeenOnOneSideOnly_IsNotSettled()
    {
        var report = Report("{row: sound, with: {condition: sound}}");

        Assert.False(Assert.Single(Rule(report, Sound).Conditions).IsSettledBothWays);
        Assert.Contains(CoverageText.Lines(report, 200), line => line.Text.EndsWith("never no: oil_pan.condition is sound", StringComparison.Ordinal));
        Assert.Contains(CoverageText.Lines(report, 200), line => line.Text.EndsWith($"never matched: {Cold}", StringComparison.Ordinal));
        Assert.DoesNotContain(CoverageText.Lines(report, 200), line => line.Text.EndsWith($"never fired: {Sound}", StringComparison.Ordinal));
    }

    [Fact]
    public void Turns_OfOneCase_CountTogether()
    {
        var report = CoverageReport.Of(
            GivenScenario.Engine,
            GivenScenario.Read("facts: {oil_pan.condition: sound}\nnext: [ {state: [ oil_pan.condition=dented ], expect: [ {plan: goes_on} ]} ]\nexpect: [ {plan: goes_on} ]").Cases,
            TestContext.Current.CancellationToken);

        Assert.Equal((1, 1), (Rule(report, Sound).Conditions[0].Yes, Rule(report, Sound).Conditions[0].No));
    }

    [Fact]
    public void Json_OfAReport_HoldsItsSums()
    {
        var report = Report("{row: sound, with: {condition: sound}}");
        using var json = JsonDocument.Parse(CoverageJson.Write(report));

        Assert.Equal(report.Rules.Count, json.RootElement.GetProperty("coverage").GetArrayLength());
        Assert.Equal(report.Fired, json.RootElement.GetProperty("rulesFired").GetInt32());
        Assert.True(report.Settled < report.Conditions && report.Fired < report.Rules.Count);
    }

    private static CoverageReport Report(params string[] rows) => CoverageReport.Of(
        GivenScenario.Engine,
        GivenScenario.Read($"facts: {{oil_pan.condition: '{{condition}}'}}\nexpect: [ {{plan: goes_on}} ]\nrows: [ {string.Join(", ", rows)} ]").Cases,
        TestContext.Current.CancellationToken);

    private static RuleCoverage Rule(CoverageReport report, string name) => report.Rules.Single(rule => rule.Rule == name);
}
