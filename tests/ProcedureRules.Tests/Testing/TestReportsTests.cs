using System.Text.Json;
using System.Xml.Linq;
using ProcedureRules.Testing;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>The three forms of the results.</summary>
public class TestReportsTests
{
    private static readonly IReadOnlyList<CaseResult> Results = ScenarioRunner.Run(GivenScenario.Read("""
        expect: [ {step: drain_oil} ]
        rows:
          - {row: good}
          - {row: "bad & <worse>", expect: [ {no_step: drain_oil} ]}
        """).Cases, TestContext.Current.CancellationToken);

    [Fact]
    public void Text_OfAFailure_NamesPlaceExpectedCameAndWhy()
    {
        var lines = TestText.Lines(Results).Select(line => line.Text).ToList();

        Assert.Equal("FAILED a pan: bad & <worse>", lines[0]);
        Assert.Equal("  pan.yaml:7:38:", lines[1]);
        Assert.Equal("    expected  no_step: drain_oil", lines[2]);
        Assert.Equal("    came      step 2: Drain the oil from the oil pan", lines[3]);
        Assert.StartsWith("    | ", lines[4], StringComparison.Ordinal);
        Assert.Equal("2 cases of 1 scenario, 3 expectations: 1 failed.", lines[^1]);
    }

    [Fact]
    public void JUnit_OfAFailure_CountsAndNamesIt()
    {
        var suite = XDocument.Parse(TestJUnit.Write(Results)).Root!.Element("testsuite")!;

        Assert.Equal(("2", "1", "0"), ((string?)suite.Attribute("tests"), (string?)suite.Attribute("failures"), (string?)suite.Attribute("errors")));
        var failed = Assert.Single(suite.Elements("testcase"), one => one.Element("failure") is not null);
        Assert.Equal("bad & <worse>", (string?)failed.Attribute("name"));
        Assert.Equal("expected no_step: drain_oil; came step 2: Drain the oil from the oil pan", (string?)failed.Element("failure")!.Attribute("message"));
        Assert.StartsWith("pan.yaml:7:38", failed.Element("failure")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_OfAFailure_HoldsItsPlaceAndWhy()
    {
        using var json = JsonDocument.Parse(TestJson.Write(Results));
        var root = json.RootElement;

        Assert.Equal((2, 1, 3), (root.GetProperty("cases").GetInt32(), root.GetProperty("failed").GetInt32(), root.GetProperty("expectations").GetInt32()));
        var failed = root.GetProperty("results")[1].GetProperty("expectations")[1];
        Assert.Equal((7, 38), (failed.GetProperty("line").GetInt32(), failed.GetProperty("column").GetInt32()));
        Assert.True(failed.GetProperty("because").GetArrayLength() > 0);
    }
}
