using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>Each keyword, met and not met; what is not met says what came.</summary>
public class ExpectationTests
{
    [Theory]
    [InlineData("{step: drain_oil}", true, "")]
    [InlineData("{step: drain_oil(oil_pan)}", true, "")]
    [InlineData("{step: drain_oil, is: sure}", true, "")]
    [InlineData("{step: drain_oil, is: possible}", false, "Drain the oil from the oil pan, and it is sure")]
    [InlineData("{step: remove_pan}", false, "no such step among 4")]
    [InlineData("{step: drain_oil#1}", true, "")]
    [InlineData("{step: drain_oil(oil_pan)#2}", false, "no such step among 4")]
    [InlineData("{no_step: drain_oil#2}", true, "")]
    [InlineData("{danger: Lock the lift, at: drain_oil#2}", false, "step 2, drain_oil(oil_pan): Lock the lift")]
    [InlineData("{no_step: remove_pan}", true, "")]
    [InlineData("{no_step: drain_oil}", false, "step 2: Drain the oil from the oil pan")]
    [InlineData("{order: drain_oil before fill_oil}", true, "")]
    [InlineData("{order: fill_oil before drain_oil}", false, ", after step 2: Drain the oil")]
    [InlineData("{order: remove_pan before drain_oil}", false, "'remove_pan' is not in the plan")]
    [InlineData("{danger: lock THE lift}", true, "")]
    [InlineData("{danger: Lock the lift, at: drain_oil}", true, "")]
    [InlineData("{danger: Lock the lift, at: fill_oil}", false, "step 2, drain_oil(oil_pan): Lock the lift")]
    [InlineData("{warning: Lock the lift}", false, "no warning has these words")]
    [InlineData("{no_danger: Lock the lift}", false, "step 2, drain_oil(oil_pan): Lock the lift")]
    [InlineData("{no_danger: Lock the lift, at: fill_oil}", true, "")]
    [InlineData("{check: exhaust.surface}", false, "no check has these words")]
    [InlineData("{wait: nothing}", false, "no wait has these words")]
    [InlineData("{tool: drain tray}", true, "")]
    [InlineData("{no_tool: drain tray}", false, "drain tray, 10 qt")]
    [InlineData("{supply: engine oil}", true, "")]
    [InlineData("{supply: paint}", false, "no supply has these words")]
    [InlineData("{question: engine.since_run}", true, "")]
    [InlineData("{question: oil_pan.gasket}", false, "not among the")]
    [InlineData("{no_question: oil_pan.gasket}", true, "")]
    [InlineData("{no_question: engine.since_run}", false, "asked: How long ago was the engine switched off?")]
    [InlineData("{value: {oil_pan.gasket: unknown}}", true, "")]
    [InlineData("{value: {oil_pan.gasket: cork}}", false, "cork or rubber or sealant, not known")]
    [InlineData("{at_least: {engine.rise: 0 in}}", true, "")]
    [InlineData("{at_least: {engine.rise: 2 in}}", false, "0 in")]
    [InlineData("{at_most: {engine.rise: 6 in}}", true, "")]
    [InlineData("{labour: 20 min..2 h}", true, "")]
    [InlineData("{labour: 1..2 min}", false, " in 4 steps")]
    [InlineData("{labour: at least 20 min}", true, "")]
    [InlineData("{labour: at least 2 h}", false, " in 4 steps")]
    [InlineData("{labour: at most 2 h}", true, "")]
    [InlineData("{labour: at most 1 min}", false, " in 4 steps")]
    [InlineData("{plan: goes_on}", true, "")]
    [InlineData("{plan: stops}", false, "it goes on, with 4 steps")]
    [InlineData("{stop: oil pressure}", false, "no stop has these words")]
    [InlineData("{no_stop: oil pressure}", true, "")]
    [InlineData("{no_finding: worn_out(starter)}", true, "")]
    [InlineData("{finding: worn_out(starter)}", false, "nothing speaks of it")]
    [InlineData("{conflict: oil_pan.gasket}", false, "no statements contradict each other")]
    [InlineData("{way: Raise the engine}", false, "no way has these words")]
    [InlineData("{no_way: Raise the engine}", true, "")]
    public void Expectation_OnAnOilChange_IsJudged(string expectation, bool isMet, string came)
    {
        var result = GivenScenario.Judge(expectation);

        Assert.Equal(isMet, result.IsMet);
        Assert.Contains(came, result.Came, StringComparison.Ordinal);
        Assert.Equal(isMet, result.Came.Length == 0);
    }

    [Theory]
    [InlineData("{finding: pinion_too_far(starter), is: sure}", true)]
    [InlineData("{finding: worn_out(starter), is: possible}", true)]
    [InlineData("{finding: worn_out(starter), is: ruled_out}", false)]
    [InlineData("{no_finding: worn_out(starter)}", false)]
    public void Finding_OfAWhine_IsJudged(string expectation, bool isMet) =>
        Assert.Equal(isMet, GivenScenario.Judge(expectation, "facts: {engine.noise: whine}").IsMet);

    [Theory]
    [InlineData("2 in", "2 in +/- 0.1 in", true)]
    [InlineData("2.05 in", "2 in +/- 0.1 in", true)]
    [InlineData("2.2 in", "2 in +/- 0.1 in", false)]
    [InlineData("50.8 mm", "2 in", true)]
    [InlineData("1..3 in", "2 in", false)]
    [InlineData("1..3 in", "0..4 in", true)]
    public void Value_OfAFact_LiesWithinWhatIsExpected(string stated, string expected, bool isMet) =>
        Assert.Equal(isMet, GivenScenario.Judge($"{{value: {{oil_pan.drop_available: {expected}}}}}", $"facts: {{oil_pan.drop_available: {stated}}}").IsMet);

    // The times of the pack: raising 5..10 min, draining 15..30 min, filling 5..10 min, lowering 3..5 min; one technician has them one by one.
    [Theory]
    [InlineData("labour", "28..55 min", "", true)]
    [InlineData("labour", "28 min", "low", true)]
    [InlineData("labour", "41.5 min", "likely", true)]
    [InlineData("labour", "55 min", "high", true)]
    [InlineData("labour", "at most 54 min", "", false)]
    [InlineData("labour", "at most 54 min", "likely", true)]
    [InlineData("elapsed", "28..55 min", "", true)]
    [InlineData("elapsed", "28 min", "low", true)]
    [InlineData("elapsed", "at least 42 min", "likely", false)]
    [InlineData("elapsed", "at most 54 min", "high", false)]
    public void Time_OfAnOilChange_IsJudgedByEstimate(string keyword, string due, string only, bool isMet)
    {
        var result = GivenScenario.Judge($"{{{keyword}: {due}{(only.Length == 0 ? "" : $", case: {only}")}}}", "facts: {engine.since_run: 8 h}");

        Assert.True(isMet == result.IsMet, result.Came);
    }

    [Theory]
    [InlineData("start: 2026-01-05T08:00", "at most 1 h", true)]
    [InlineData("start: 2026-01-05T16:55", "at least 15 h", true)]
    [InlineData("start: 2026-01-09T16:55", "at least 60 h", true)]
    [InlineData("shop: {shop: Late, hours: {monday: 8:00-22:00}}\nstart: 2026-01-05T16:55", "at most 1 h", true)]
    [InlineData("shop: {shop: Late, hours: {monday: 8:00-22:00}}\nstart: 2026-01-05T21:55", "at most 1 h", false)]
    public void Elapsed_OverTheNight_CountsIt(string day, string due, bool isMet) =>
        Assert.Equal(isMet, GivenScenario.Judge($"{{elapsed: {due}, case: likely}}", $"facts: {{engine.since_run: 8 h}}\n{day}").IsMet);

    [Fact]
    public void Elapsed_NotMet_SaysAllEstimatesAndWhatDecides()
    {
        var result = GivenScenario.Judge("{elapsed: at most 1 min, case: likely}", "facts: {engine.since_run: 8 h}");

        Assert.StartsWith("low 28 min, likely ", result.Came, StringComparison.Ordinal);
        Assert.Contains(result.Because, line => line.Contains("drain_oil(oil_pan)", StringComparison.Ordinal));
    }

    [Fact]
    public void Conflict_OfTwoReadings_IsFound() => Assert.True(GivenScenario.Judge(
        "{conflict: oil_pan.gasket}", "facts: {oil_pan.gasket: [{value: cork, source: measured}, {value: rubber, source: measured}]}").IsMet);

    [Fact]
    public void Missing_Step_IsExplainedByWhyNot()
    {
        var result = GivenScenario.Judge("{step: remove_pan}");

        Assert.Contains(result.Because, line => line.StartsWith("Not in the plan: Unbolt the oil pan", StringComparison.Ordinal));
        Assert.Contains(result.Because, line => line.Contains("pack bottom_end", StringComparison.Ordinal));
    }

    [Fact]
    public void Unwanted_Step_IsExplainedByWhy() =>
        Assert.Contains(GivenScenario.Judge("{no_step: drain_oil}").Because, line => line.Contains("the job is asked for", StringComparison.Ordinal));
}
