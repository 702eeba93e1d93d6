using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>Mistakes in scenarios: all told at once, each where it stands, with the nearest right spelling.</summary>
public class ScenarioMistakesTests
{
    [Theory]
    [InlineData("expect: [{step: drian_oil}]", "pan.yaml:4:17: error PR0201: there is no operation 'drian_oil'; did you mean 'drain_oil'?")]
    [InlineData("expect: [{step: drain_oil(oil_pam)}]", "pan.yaml:4:27: error PR0501: the sheet has no part 'oil_pam'; did you mean 'oil_pan'?")]
    [InlineData("expect: [{step: drain_oil(engine)}]", "pan.yaml:4:27: error PR0902: 'drain_oil' is done on a part of the kind 'oil_pan'; 'engine' is a 'engine'")]
    [InlineData("expect: [{step: drain the oil}]", "pan.yaml:4:17: error PR0902: 'drain the oil' is not a step: write 'drain_oil', 'drain_oil(engine)' for one part, or 'drain_oil#2' for the second time")]
    [InlineData("expect: [{step: drain_oil#0}]", "pan.yaml:4:17: error PR0902: 'drain_oil#0' is not a step: write 'drain_oil', 'drain_oil(engine)' for one part, or 'drain_oil#2' for the second time")]
    [InlineData("expect: [{order: drain_oil then fill_oil}]", "pan.yaml:4:18: error PR0902: 'drain_oil then fill_oil' is not an order: write 'drain_oil before remove_pan'")]
    [InlineData("expect: [{order: drain_oil before fil_oil}]", "pan.yaml:4:35: error PR0201: there is no operation 'fil_oil'; did you mean 'fill_oil'?")]
    [InlineData("expect: [{finding: worn_out}]", "pan.yaml:4:20: error PR0902: 'worn_out' is not a cause of a part: write 'worn_out(starter)'")]
    [InlineData("expect: [{finding: wornout(starter)}]", "pan.yaml:4:20: error PR0201: there is no cause 'wornout'; did you mean 'worn_out'?")]
    [InlineData("expect: [{value: {oil_pan.drop_avialable: 2 in}}]", "pan.yaml:4:27: error PR0503: 'oil_pan' has no fact 'drop_avialable'; did you mean 'drop_available'?")]
    [InlineData("expect: [{value: {oil_pan.drop_available: 2 psi}}]", "error PR0504: ")]
    [InlineData("expect: [{at_least: {oil_pan.gasket: cork}}]", "pan.yaml:4:22: error PR0902: 'oil_pan.gasket' takes words: demands are on quantities")]
    [InlineData("expect: [{question: how far}]", "pan.yaml:4:21: error PR0902: 'how far' is nothing that is asked for")]
    [InlineData("expect: [{question: 'part oil_cooler'}]", "PR0501")]
    [InlineData("expect: [{labour: 3 in}]", "error PR0902: '3 in' is no time: ")]
    [InlineData("expect: [{elapsed: at most 3 in}]", "pan.yaml:4:28: error PR0902: 'at most 3 in' is no time: ")]
    [InlineData("expect: [{labour: 3 h, case: most}]", "error PR0104: ")]
    [InlineData("start: tomorrow\nexpect: [{elapsed: 3 h}]", "pan.yaml:4:8: error PR0902: 'tomorrow' is no date and time such as 2026-11-25T08:00")]
    [InlineData("shop: {shop: x, technicans: 2}\nexpect: [{elapsed: 3 h}]", "did you mean 'technicians'?")]
    [InlineData("shop: no-such-shop.yaml\nexpect: [{elapsed: 3 h}]", "PR0001: there is no such file")]
    [InlineData("expect: [{no_warning: Keep hans out}]", "pan.yaml:4:23: error PR0904: no rule says 'Keep hans out': that the plan does not say it proves nothing")]
    [InlineData("expect: [{stpe: drain_oil}]", "pan.yaml:4:11: error PR0101: ")]
    [InlineData("expect: [{finding: worn_out(starter), is: maybe}]", "error PR0104: ")]
    [InlineData("facts: {oil_pan.dented: yes}", "pan.yaml:1:1: error PR0903: this scenario expects nothing")]
    [InlineData("facts: {oil_pan.drop_available: '{drop}'}\nexpect: [{plan: goes_on}]", "pan.yaml:4:34: error PR0901: there are no rows that give 'drop'")]
    [InlineData("expect: [{plan: goes_on}]\nrows: [{row: a, with: {drop: 2 in}}]", "pan.yaml:5:24: error PR0901: nothing uses 'drop'")]
    [InlineData("facts: {oil_pan.drop_available: '{drop}'}\nexpect: [{plan: goes_on}]\nrows: [{row: a, with: {dorp: 2 in}}]", "pan.yaml:4:34: error PR0901: row 'a' gives no 'drop'; did you mean 'dorp'?")]
    [InlineData("facts: {oil_pan.drop_available: '{drop}'}\nexpect: [{plan: goes_on}]\nrows: [{row: a, with: {drop: 2}}]", "pan.yaml:6:30: error PR0504: ")]
    [InlineData("expect: [{plan: goes_on}]\nrows: [{row: a}, {row: a}]", "pan.yaml:5:24: error PR0507: ")]
    [InlineData("expect: [{plan: goes_on}]\nnext: [{state: [oil_pan.drop_available=2 inn]}]", "pan.yaml:5:")]
    [InlineData("expect: [{plan: goes_on}]\nnext: [{done: [drian_oil]}]", "pan.yaml:5:16: error PR0201: ")]
    public void Scenario_WithAMistake_IsToldWhereItStands(string text, string expected) => Assert.Contains(expected, GivenScenario.Mistakes(text), StringComparison.Ordinal);

    [Fact]
    public void Scenario_WithManyMistakes_TellsAllOfThem()
    {
        var lines = GivenScenario.Mistakes("facts: {oil_pan.dented: perhaps}\nexpect: [{step: drian_oil}, {order: a before b}, {no_danger: no such thing}]").Split('\n');

        Assert.Equal(5, lines.Length);
    }

    [Fact]
    public void Scenario_WordsOfAnotherSort_AreToldWhichSortSaysThem()
    {
        var mistake = Assert.Single(GivenScenario.Read("expect: [{no_danger: Keep hands out}]").Diagnostics);

        Assert.Equal("a warning says it", Assert.Single(mistake.Notes).Text);
    }

    [Theory]
    [InlineData("no_danger", "Lock the lift before")]
    [InlineData("no_detail", "Tighten to 11 lb.ft, crosswise")]
    public void Scenario_WordsThatARuleCanRender_AreTaken(string keyword, string words) =>
        Assert.Equal("", GivenScenario.Mistakes($"expect: [{{{keyword}: '{words}'}}]"));

    [Fact]
    public void Scenario_OfASheetThatIsNotThere_SaysSo()
    {
        var set = GivenScenario.ReadWhole("scenario: x\nvehicle: no-such.yaml\njobs: [change_oil]\nexpect: [{plan: goes_on}]\n");

        Assert.Equal("PR0001", Assert.Single(set.Diagnostics).Code);
        Assert.Empty(set.Cases);
    }

    [Fact]
    public void Scenario_ThatIsAWorkOrder_GetsOneComplaint() =>
        Assert.Equal("PR0219", Assert.Single(GivenScenario.ReadWhole("work_order: x\njobs: [change_oil]\n").Diagnostics).Code);

    [Fact]
    public void Scenario_WithLinesLeftOutOrCutShort_IsReadOrComplainedAbout()
    {
        var whole = GivenScenario.Head + "facts: {oil_pan.drop_available: '{drop}'}\nexpect:\n  - step: drain_oil\n    is: sure\n  - value: {oil_pan.dented: yes}\nnext:\n  - state: [ oil_pan.dented=yes ]\nrows:\n  - row: a\n    with: {drop: 2 in}\n";
        for (var length = 0; length < whole.Length; length += 3)
        {
            var set = GivenScenario.ReadWhole(whole[..length]);
            Assert.True(set.Cases.Count > 0 || set.Diagnostics.Count > 0, whole[..length]);
        }
    }
}
