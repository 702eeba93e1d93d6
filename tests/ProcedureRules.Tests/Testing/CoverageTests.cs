using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using ProcedureRules.Testing;
using ProcedureRules.Tests.Docs;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What scenarios reach of the rules.</summary>
public partial class CoverageTests
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
    public void Conclusion_OfAWayNotTaken_IsNotUsed()
    {
        var report = Report("{row: sound, with: {condition: sound}}");
        var conclusions = Rule(report, Sound).Conclusions;

        Assert.NotEmpty(conclusions);
        Assert.All(conclusions, conclusion => Assert.Equal(1, conclusion.Used));
        Assert.All(Rule(report, Cold).Conclusions, conclusion => Assert.Equal(0, conclusion.Used));
        Assert.True(report.Used < report.Conclusions);
    }

    [Fact]
    public void Operations_FactsAndJobs_AreCountedByCase()
    {
        var report = Report("{row: sound, with: {condition: sound}}", "{row: unknown, with: {condition: unknown}}");

        Assert.Equal((2, 2), (report.Jobs.Single(job => job.Job == "change_oil").Asked, report.Jobs.Single(job => job.Job == "change_oil").Finished));
        Assert.Equal(0, report.Jobs.Single(job => job.Job == "replace_oil_pan").Asked);
        Assert.Equal(2, report.Operations.Single(operation => operation.Operation == "drain_oil").Planned);
        Assert.Contains(report.Operations, operation => operation.Planned == 0);
        Assert.Equal(1, report.Facts.Single(fact => fact.Fact == "oil_pan.condition").Known);
        Assert.Contains(CoverageText.Lines(report, 200), line => line.Text.EndsWith("never asked for: replace_oil_pan", StringComparison.Ordinal));
    }

    [Fact]
    public void Html_OfAReport_LightsTheSourceByMoreThanColour()
    {
        var html = CoverageHtml.Write(Report("{row: sound, with: {condition: sound}}"));

        Assert.Contains("<mark class=partly title=\"yes 1, no 0, unknown 0\">oil_pan.condition is sound</mark>", html, StringComparison.Ordinal);
        Assert.Contains("<b class=fully>\u2713</b>", html, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme: dark", html, StringComparison.Ordinal);
        Assert.DoesNotContain("http", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Html_OfAText_KeepsItsWordsAndGapsLeadOn()
    {
        var html = CoverageHtml.Write(Report("{row: sound, with: {condition: sound}}"));
        var shown = string.Join('\n', Code().Matches(html).Select(match => WebUtility.HtmlDecode(Tag().Replace(match.Groups[1].Value, ""))));
        var gaps = Gap().Matches(html).Select(match => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();

        Assert.Equal(ReferencePage.Instance.Pack.TrimEnd('\n'), shown);
        Assert.True(gaps.Count > 2);
        Assert.Equal(Enumerable.Range(1, gaps.Count), gaps);
    }

    [Fact]
    public void Json_OfAReport_HoldsItsSums()
    {
        var report = Report("{row: sound, with: {condition: sound}}");
        using var json = JsonDocument.Parse(CoverageJson.Write(report));

        Assert.Equal(report.Rules.Count, json.RootElement.GetProperty("coverage").GetArrayLength());
        Assert.Equal(report.Fired, json.RootElement.GetProperty("rulesFired").GetInt32());
        Assert.Equal(report.Facts.Count, json.RootElement.GetProperty("facts").GetArrayLength());
        Assert.Equal(report.Operations[0].Operation, json.RootElement.GetProperty("operations")[0].GetProperty("operation").GetString());
        Assert.Equal(report.Used, json.RootElement.GetProperty("coverage").EnumerateArray().SelectMany(rule => rule.GetProperty("conclusions").EnumerateArray()).Count(one => one.GetProperty("used").GetInt32() > 0));
        Assert.True(report.Settled < report.Conditions && report.Fired < report.Rules.Count);
    }

    private static CoverageReport Report(params string[] rows) => CoverageReport.Of(
        GivenScenario.Engine,
        GivenScenario.Read($"facts: {{oil_pan.condition: '{{condition}}'}}\nexpect: [ {{plan: goes_on}} ]\nrows: [ {string.Join(", ", rows)} ]").Cases,
        TestContext.Current.CancellationToken);

    [GeneratedRegex("<code>(.*?)</code>", RegexOptions.Singleline)]
    private static partial Regex Code();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tag();

    [GeneratedRegex("id=gap([0-9]+)")]
    private static partial Regex Gap();

    private static RuleCoverage Rule(CoverageReport report, string name) => report.Rules.Single(rule => rule.Rule == name);
}
