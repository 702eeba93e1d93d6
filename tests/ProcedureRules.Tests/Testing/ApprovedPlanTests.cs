using System.Globalization;
using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;
using ProcedureRules.Testing.Approving;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>A case that has an approved plan is held to the whole of what it says.</summary>
public sealed class ApprovedPlanTests
{
    private const string Path = "approved/pan.txt";
    private const string Narrow = "{row: narrow, with: {gap: 1 in}, expect: [ {danger: Mind} ]}";
    private const string Wide = "{row: wide, with: {gap: 4 in}, expect: [ {no_danger: Mind} ]}";

    [Fact]
    public void Plan_Printed_SaysAllThatStandsInIt() => Assert.Equal(
        """
        Approved plans of pan.yaml, printed by 'test --approve'. Read what changes before it is kept.

        == narrow
        labour
          3 min
        step remove_cover(cover)
          Lift the cover (1 min)
          because [job take_off]
        step remove_pan(pan)
          Lower the pan (1 min)
          DANGER: Mind the gap [a small gap]
          WARNING: Oil runs out [oil is under it]
          detail: Use the thin wrench [a thin wrench]
          after remove_cover(cover)
          because [job take_off; the cover comes first]
        step fit_cover(cover)
          Fit the cover (1 min)
          after remove_cover(cover)
          because [put back]
        worked out
          pan.slack = 5 in [slack]

        == wide
        like: narrow
        ~ step remove_pan(pan)
          - DANGER: Mind the gap [a small gap]
          - detail: Use the thin wrench [a thin wrench]

        """.ReplaceLineEndings("\n"),
        Print(TinyPack.Engine, Narrow, Wide));

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Case_ThatIsAsApproved_Passes(string ending)
    {
        var results = ScenarioRunner.Run(Held(TinyPack.Engine, Print(TinyPack.Engine, Narrow, Wide).Replace("\n", ending, StringComparison.Ordinal)).Cases, TestContext.Current.CancellationToken);

        Assert.All(results, result => Assert.Contains(result.Expectations, expectation => expectation.Expected == "the approved plan"));
        Assert.All(results, result => Assert.True(result.Passed));
    }

    [Theory]
    [InlineData("narrow", "text: Lower the pan", "text: Drop the pan", "- step remove_pan(pan): Lower the pan (1 min)|+ step remove_pan(pan): Drop the pan (1 min)")]
    [InlineData("narrow", "detail: Use the thin", "detail: Use a thin", "- step remove_pan(pan): detail: Use the thin wrench [a thin wrench]|+ step remove_pan(pan): detail: Use a thin wrench [a thin wrench]")]
    [InlineData("narrow", "pan.slack: 5 in", "pan.slack: 6 in", "- worked out: pan.slack = 5 in [slack]|+ worked out: pan.slack = 6 in [slack]")]
    [InlineData("wide", "warning: Oil runs", "caution: Oil runs", "+ step remove_pan(pan): - WARNING: Oil runs out [oil is under it]|+ step remove_pan(pan): + CAUTION: Oil runs out [oil is under it]")]
    public void Case_ThatIsNotAsApproved_TellsTheLinesAtItsRow(string row, string old, string now, string lines)
    {
        var changed = TinyPack.Load(TinyPack.Text.Replace(old, now, StringComparison.Ordinal));
        var result = Held(changed, Print(TinyPack.Engine, Narrow, Wide)).Cases.Single(one => one.Row == row).Run(TestContext.Current.CancellationToken);
        var failure = Assert.Single(result.Failures);

        Assert.Equal(lines, string.Join('|', failure.Because.Select(line => line.Trim())));
        Assert.Equal(result.Case.Span, failure.Span);
        Assert.Matches(@"^\d lines otherwise than in approved/pan.txt:\d+:4$", failure.Came);
    }

    [Fact]
    public void Case_WithoutAnApprovedPlan_IsHeldToNone()
    {
        var cases = Held(TinyPack.Engine, Print(TinyPack.Engine, Narrow)).Cases;

        Assert.Equal(["narrow"], cases.Where(one => one.IsHeld).Select(one => one.Row));
    }

    [Theory]
    [InlineData("")]
    [InlineData("== ")]
    [InlineData("== narrow\n  a line without a heading\nlabour\nlabour\n")]
    [InlineData("== narrow\nlike: narrow\n")]
    [InlineData("\0== narrow\n~ \n- \n+ ")]
    public void File_OfAnyText_BreaksNothing(string text)
    {
        var set = ScenarioSet.Read(TinyPack.Engine, [TinyPack.Scenario(Narrow)], [new SourceFile(Path, text)]);

        Assert.All(ScenarioRunner.Run(set.Cases, TestContext.Current.CancellationToken), result => Assert.Empty(result.Diagnostics));
    }

    [Fact]
    public void Plans_OfAMachineWithAnotherCulture_ReadTheSame()
    {
        var (here, before) = (Print(TinyPack.Engine, Narrow, Wide), CultureInfo.CurrentCulture);
        try
        {
            CultureInfo.CurrentCulture = Culture();
            Assert.Equal(here, Print(TinyPack.Engine, Narrow, Wide));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("a b c d", "a c x d", "- b|+ x")]
    [InlineData("a b", "b a", "- a|+ a")]
    [InlineData("", "a", "+ a")]
    [InlineData("a a b", "a b b", "- a|+ b")]
    [InlineData("a", "a", "")]
    public void Difference_OfTwoTexts_IsAsSmallAsCanBe(string before, string after, string lines) =>
        Assert.Equal(lines, string.Join('|', LineDifference.Between(Words(before), Words(after))));

    private static CultureInfo Culture()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (culture.NumberFormat.NumberDecimalSeparator, culture.NumberFormat.NegativeSign) = (",", "~");
        return culture;
    }

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static ScenarioSet Held(ProcedureEngine engine, string approved)
    {
        var set = ScenarioSet.Read(engine, [TinyPack.Scenario(Narrow, Wide)], [new SourceFile(Path, approved)]);
        Assert.Empty(set.Diagnostics);
        return set;
    }

    private static string Print(ProcedureEngine engine, params string[] rows) =>
        ApprovedFile.Write("pan.yaml", ApprovedRun.Of(ScenarioSet.Read(engine, [TinyPack.Scenario(rows)]).Cases, _ => true, TestContext.Current.CancellationToken).SelectMany(run => run.Plans));
}
