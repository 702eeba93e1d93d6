using ProcedureRules.Testing;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>A change that nobody notices tells why.</summary>
public sealed class SurvivalGroundTests
{
    private const string Deep = """
          - rule: deep work
            for: {s: step}
            when: [ s does remove_pan ]
            then: [ {need: cover.place is off} ]
            because: It is below.
            basis: common practice

        """;

    private const string Low = """
          - rule: low work
            for: {s: step}
            when: [ "s leaves pan.place fitted" ]
            then: [ {need: cover.place is off} ]
            because: It is low.
            basis: common practice

        """;

    [Fact]
    public void Why_AnotherRuleAsksForTheSame_NamesIt() =>
        Assert.Equal("others say the same: 'low work' (1 moment)", Of(Deep + Low, "deep work", "drop the conclusion 'cover.place is off'", "1 in"));

    // The job lifts the cover, and an order says when: the need is met whether it is asked for or not.
    [Fact]
    public void Why_TheOrderMeetsItAnyway_IsSaid() =>
        Assert.Equal("the steps come in an order that meets it without being asked for it (1 moment)", Of(Deep, "deep work", "drop the conclusion 'cover.place is off'", "1 in"));

    [Fact]
    public void Why_NothingChangesWhatIsAskedFor_NamesIt() =>
        Assert.Equal(
            "no plan changes 'bench.place', so that it is met anyway (1 moment)",
            Of(Deep.Replace("cover.place is off", "bench.place is fitted", StringComparison.Ordinal), "deep work", "drop the conclusion 'bench.place is fitted'", "1 in", pack => pack.Replace("cover: {}}", "cover: {}, bench: {}}", StringComparison.Ordinal)));

    [Fact]
    public void Why_TheValueIsFarFromTheFigure_IsSaid() =>
        Assert.Equal("it makes no difference at the one moment that the rule is tried at", Of("", "a small gap", "2 in becomes 3 in in 'pan.gap < 2 in'", "1 in"));

    [Fact]
    public void Why_ACheckReadsAlike_IsSaid() =>
        Assert.Equal(
            "the check reads alike with it, in its words and its verdict (1 moment)",
            Of(Deep.Replace("need: cover.place is off", "check: pan.gap <= 50 in, text: Not too wide", StringComparison.Ordinal), "deep work", "50 in becomes 40 in", "1 in", expect: "check: Not too wide, is: within"));

    [Fact]
    public void Why_TheRuleNeverHolds_IsSaid() =>
        Assert.Equal("the rule does not hold, with the change or without, at the one moment that the rule is tried at", Of("", "a small gap", "drop the conclusion 'Mind the gap'", "4 in"));

    [Fact]
    public void Why_WhatItHangsOnIsNotKnown_IsSaid() =>
        Assert.Equal("what the rule hangs on is not known where it makes a difference (1 moment)", Of("", "a thin wrench", "2 in becomes 3 in in 'pan.gap < 2 in'", "unknown"));

    [Fact]
    public void Why_ADifferenceThatNobodyExpects_IsSaid() =>
        Assert.Equal("it makes a difference that no expectation speaks of (1 moment)", Of("", "slack", "5 in becomes 4 in", "1 in"));

    [Fact]
    public void Why_OfWhatIsNoticed_IsNothing() => Assert.Null(Of("", "a small gap", "drop the conclusion 'Mind the gap'", "1 in", expect: "danger: Mind"));

    // What an earlier run has found is told with its ground, too.
    [Fact]
    public void Why_FromAResultFile_IsTheSame()
    {
        var path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.tsv");
        try
        {
            MutationReport Run() => MutationReport.Of(TinyPack.Engine, TinyPack.Rows("{row: a, with: {gap: 1 in}, expect: [ {labour: 0..10 h} ]}"), new() { ResultFile = path }, TestContext.Current.CancellationToken);
            var first = Run();

            Assert.Contains(first.Mutants, mutant => mutant.Ground is not null);
            Assert.Equal(first.Mutants.Select(mutant => mutant.Ground), Run().Mutants.Select(mutant => mutant.Ground));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static string? Of(string more, string rule, string change, string gap, Func<string, string>? edit = null, string expect = "labour: 0..10 h")
    {
        var text = TinyPack.Text.Replace("rules:\n", $"rules:\n{more}", StringComparison.Ordinal);
        var engine = TinyPack.Load(edit?.Invoke(text) ?? text);
        var scenario = TinyPack.Scenario($"{{row: a, with: {{gap: {gap}}}, expect: [ {{{expect}}} ]}}");
        var parts = edit is null ? scenario.Text : scenario.Text.Replace("cover: cover}", "cover: cover, bench: bench}", StringComparison.Ordinal);
        var cases = ScenarioSet.Read(engine, [new(scenario.Path, parts)]);
        Assert.Equal("", string.Concat(cases.Diagnostics.Select(mistake => mistake.ToSnippet())));
        var report = MutationReport.Of(engine, cases.Cases, new() { Filter = rule }, TestContext.Current.CancellationToken);
        Assert.Empty(report.Failing.SelectMany(result => result.Failures).Select(failure => $"{failure.Expected}: {failure.Came}"));
        return report.Mutants.Single(mutant => mutant.Rule == rule && mutant.Change == change).Ground;
    }
}
