using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What two versions of a pack differ in, what that does to plans and why, and what step of the version it takes.</summary>
public sealed class CompareTests
{
    private const string Part = "{row: a, with: {gap: 1 in}, expect: [ {danger: Mind} ]}";

    [Theory]
    [InlineData("places: [bay]", "places:   # a remark\n  - bay", null)]
    [InlineData("{vehicle: {}, pan: {}, cover: {}}", "{vehicle: {}, cover: {}, pan: {}}", null)]
    [InlineData("It pinches.", "It pinches fingers.", VersionPart.Patch)]
    [InlineData("how: Feeler gauge.", "how: Feeler gauge or wire.", VersionPart.Patch)]
    [InlineData("{danger: Mind the gap}", "{danger: Mind the big gap}", VersionPart.Patch)]
    [InlineData("rule: a small gap", "rule: a tiny gap", VersionPart.Patch)]
    [InlineData("about: A pan", "about: The pan", VersionPart.Patch)]
    [InlineData("pan: {}, ", "pan: {text: sump}, ", VersionPart.Patch)]
    [InlineData("{danger: Mind the gap}", "{warning: Mind the gap}", VersionPart.Minor)]
    [InlineData("{danger: Mind the gap}", "{danger: Mind the gap}, {detail: Slowly}", VersionPart.Minor)]
    [InlineData("pan.gap < 2 in ]\n    then: [ {danger", "pan.gap < 3 in ]\n    then: [ {danger", VersionPart.Minor)]
    [InlineData("cover: {}}", "cover: {}, hose: {}}", VersionPart.Minor)]
    [InlineData("places: [bay]", "places: [bay, bench]", VersionPart.Minor)]
    [InlineData("states: [fitted, off]", "states: [fitted, off, loose]", VersionPart.Minor)]
    [InlineData("text: Lower the pan, change: {place: fitted -> off}, undo: fit_pan, place: bay, time: 1 min", "text: Lower the pan, change: {place: fitted -> off}, undo: fit_pan, place: bay, time: 2 min", VersionPart.Minor)]
    [InlineData("pan.gap: {type: length", "pan.colour: {type: [red, green], ask: Which?}\n  pan.gap: {type: length", VersionPart.Minor)]
    [InlineData("take_off", "lower", VersionPart.Major)]
    [InlineData("remove_cover", "lift_cover", VersionPart.Major)]
    [InlineData("places: [bay]", "places: [bay]\nenergies: []", null)]
    [InlineData("pan.slack: {type: length, range: 0..100 in, derived: yes}", "pan.slack: {type: mass, range: 0..100 kg, derived: yes}", VersionPart.Major)]
    [InlineData("pan.gap: {type: length, range: 0..100 in, ask: What gap?, how: Feeler gauge.}", "pan.gap: {type: length, range: 0..100 in, derived: yes}", VersionPart.Major)]
    public void Change_OfAPack_TakesItsStep(string before, string after, VersionPart? due)
    {
        var changed = TinyPack.Text.Replace(before, after, StringComparison.Ordinal);
        Assert.NotEqual(TinyPack.Text, changed);
        // What the rules work out goes along with what the facts are.
        if (changed.Contains("mass", StringComparison.Ordinal)) changed = changed.Replace("{pan.slack: 5 in}", "{pan.slack: 5 kg}", StringComparison.Ordinal);
        if (!changed.Contains("What gap?", StringComparison.Ordinal)) changed = changed.Replace("{pan.slack: 5 in}", "{pan.slack: 5 in, pan.gap: 1 in}", StringComparison.Ordinal);
        var comparison = Compare(changed, []);

        Assert.Equal(due, Assert.Single(comparison.Versions).Due);
        Assert.Equal(due is null, comparison.Changes.Count == 0);
    }

    [Fact]
    public void Word_OfAFactThatIsGone_TakesAMajorStepAndANewOneDoesNot()
    {
        string Words(string words) => TinyPack.Text.Replace("pan.gap: {", $"pan.colour: {{type: [{words}], ask: Which?}}\n  pan.gap: {{", StringComparison.Ordinal);

        Assert.Equal(VersionPart.Major, Due(Words("red, green"), Words("red, blue")));
        Assert.Equal(VersionPart.Minor, Due(Words("red, green"), Words("red, blue, green")));

        static VersionPart? Due(string before, string after) => PackComparison.Of(TinyPack.Load(before), [], TinyPack.Load(after), []).Versions[0].Due;
    }

    [Theory]
    [InlineData("1.0.0", null, true, null)]
    [InlineData("0.9.0", null, false, null)]
    [InlineData("1.0.0", VersionPart.Patch, false, "1.0.1")]
    [InlineData("1.0.1", VersionPart.Patch, true, "1.0.1")]
    [InlineData("1.0.1", VersionPart.Minor, false, "1.1.0")]
    [InlineData("1.1.0", VersionPart.Minor, true, "1.1.0")]
    [InlineData("1.9.3", VersionPart.Major, false, "2.0.0")]
    [InlineData("2.0.0", VersionPart.Major, true, "2.0.0")]
    [InlineData("2.0.0", VersionPart.Patch, true, "1.0.1")]
    [InlineData("0.9.9", VersionPart.Patch, false, "1.0.1")]
    public void Version_AfterOneOneOne_IsStepEnoughOrNot(string after, VersionPart? due, bool isEnough, string? least)
    {
        var step = VersionStep.Of("tiny", "1.0.0", after, due);

        Assert.Equal((isEnough, least), (step.IsEnough, step.Least));
    }

    [Theory]
    [InlineData("{danger: Mind the gap}", "{warning: Mind the gap}", "rule 'a small gap' has changed: then", PlanEffectSort.In, "WARNING: Mind the gap (at remove_pan(pan))")]
    [InlineData("{danger: Mind the gap}", "{warning: Mind the gap}", "rule 'a small gap' has changed: then", PlanEffectSort.Out, "DANGER: Mind the gap (at remove_pan(pan))")]
    [InlineData("{order: s before t}", "{order: t before s}", "rule 'the cover comes first' has changed: then", PlanEffectSort.Moved, "step: L")]
    [InlineData("undo: fit_pan, place: bay, time: 1 min", "undo: fit_pan, place: bay, time: 2 min", "operation 'remove_pan' has changed: time", PlanEffectSort.Otherwise, "step: Lower the pan: 1 min becomes 2 min")]
    [InlineData("do: [ remove_cover(cover) ]", "do: []", "job 'take_off' has changed: do", PlanEffectSort.Out, "step: Lift the cover")]
    [InlineData("ask: What gap?", "ask: How much gap?", "fact 'pan.gap' has changed: ask", PlanEffectSort.In, "question: How much gap?")]
    [InlineData("rule: a thin wrench", "rule: no wrench", "rule 'no wrench' was 'a thin wrench'", null, "")]
    public void Effect_OfAChange_StandsUnderItsCause(string before, string after, string cause, PlanEffectSort? sort, string text)
    {
        var comparison = Compare(TinyPack.Text.Replace(before, after, StringComparison.Ordinal), [TinyPack.Scenario(Part, "{row: open, with: {gap: unknown}}")]);

        if (sort is null)
        {
            Assert.Empty(comparison.Plans);
            Assert.Equal(cause, Assert.Single(comparison.Unseen).ToString());
            return;
        }

        var found = Assert.Single(comparison.Causes, one => one.Effects.Any(effect => effect.Sort == sort && effect.Text.StartsWith(text, StringComparison.Ordinal)));
        Assert.True(found.IsTraced);
        Assert.Equal(cause, Assert.Single(found.Changes).ToString());
        Assert.Empty(comparison.Unseen);
    }

    [Fact]
    public void Rule_ThatIsNewOrGone_IsTheCauseOfWhatItSays()
    {
        const string Rule = "\n  - {rule: gloves, for: {s: step}, when: [ s does remove_cover ], then: [ {warning: Wear gloves} ], because: It is sharp., basis: common practice}";
        SourceFile[] scenarios = [TinyPack.Scenario(Part)];
        var (old, now) = (TinyPack.Engine, TinyPack.Load(TinyPack.Text + Rule));

        foreach (var (comparison, sort, says) in new[]
        {
            (PackComparison.Of(old, [], now, scenarios, cancellation: TestContext.Current.CancellationToken), PlanEffectSort.In, "rule 'gloves' is new"),
            (PackComparison.Of(now, scenarios, old, [], cancellation: TestContext.Current.CancellationToken), PlanEffectSort.Out, "rule 'gloves' is gone"),
        })
        {
            var cause = Assert.Single(comparison.Causes);
            Assert.Equal((says, true), (cause.Changes[0].ToString(), cause.IsTraced));
            Assert.Equal((sort, "WARNING: Wear gloves (at remove_cover(cover))"), (cause.Effects[0].Sort, cause.Effects[0].Text));
            Assert.Equal(["a pan: a"], cause.Effects[0].Plans);
        }
    }

    // The danger goes since another rule now works out the gap: that rule stands behind nothing in the plan before.
    [Fact]
    public void Effect_OfARuleThatMakesAFactOtherwise_IsTracedThroughTheFact()
    {
        var derived = TinyPack.Text.Replace("ask: What gap?, how: Feeler gauge.", "derived: yes", StringComparison.Ordinal)
            .Replace("{set: {pan.slack: 5 in}}", "{set: {pan.slack: 5 in}}, {set: {pan.gap: 1 in}}", StringComparison.Ordinal);
        var wider = derived.Replace("{set: {pan.gap: 1 in}}", "{set: {pan.gap: 4 in}}", StringComparison.Ordinal);
        var scenario = new SourceFile("pan.yaml", "scenario: a pan\nvehicle: {parts: {pan: pan, cover: cover}}\njobs: [ take_off ]\nexpect: [ {plan: goes_on} ]");
        var comparison = PackComparison.Of(TinyPack.Load(derived), [], TinyPack.Load(wider), [scenario], cancellation: TestContext.Current.CancellationToken);

        var cause = Assert.Single(comparison.Causes);
        Assert.Equal("rule 'slack' has changed: then", Assert.Single(cause.Changes).ToString());
        Assert.Contains(cause.Effects, effect => effect is { Sort: PlanEffectSort.Out, Text: "DANGER: Mind the gap (at remove_pan(pan))" });
    }

    [Fact]
    public void Scenario_ThatOnlyOneVersionCanRead_IsToldAndNotCompared()
    {
        var more = TinyPack.Load(TinyPack.Text.Replace("pan.gap: {", "pan.colour: {type: [red, green], ask: Which?}\n  pan.gap: {", StringComparison.Ordinal));
        var scenario = new SourceFile("red.yaml", "scenario: red\nvehicle: {parts: {pan: pan, cover: cover}}\njobs: [ take_off ]\nfacts: {pan.colour: red}\nexpect: [ {plan: goes_on} ]");

        var (forwards, back) = (
            PackComparison.Of(TinyPack.Engine, [], more, [scenario], cancellation: TestContext.Current.CancellationToken),
            PackComparison.Of(more, [scenario], TinyPack.Engine, [], cancellation: TestContext.Current.CancellationToken));

        Assert.Equal((0, "red"), (forwards.Compared, Assert.Single(forwards.OnlyAfter)));
        var (name, why) = Assert.Single(back.OnlyBefore);
        Assert.Equal("red", name);
        Assert.Contains("colour", why.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Turns_OfACase_AreComparedOneByOne()
    {
        var scenario = new SourceFile("pan.yaml", """
            scenario: a pan
            vehicle: {parts: {pan: pan, cover: cover}}
            jobs: [ take_off ]
            facts: {pan.gap: 4 in}
            next: [ {state: [ pan.gap=2.5 in ], expect: [ {no_danger: Mind} ]}, {done: [ remove_cover ], expect: [ {no_danger: Mind} ]} ]
            """);
        var comparison = Compare(TinyPack.Text.Replace("pan.gap < 2 in ]\n    then: [ {danger", "pan.gap < 3 in ]\n    then: [ {danger", StringComparison.Ordinal), [scenario]);

        Assert.Equal(3, comparison.Compared);
        Assert.Equal("a pan, turn 1", Assert.Single(comparison.Plans).Name);
    }

    [Fact]
    public void Generated_Vehicles_AreTheSameForOneSeed()
    {
        var changed = TinyPack.Text.Replace("{danger: Mind the gap}", "{warning: Mind the gap}", StringComparison.Ordinal);
        string[] Plans(int seed) => [.. Compare(changed, [], new ComparisonOptions { Generated = 20, Seed = seed }).Plans.Select(plan => plan.Name)];

        Assert.NotEmpty(Plans(1));
        Assert.Equal(Plans(1), Plans(1));
        Assert.Equal(20, Compare(changed, [], new ComparisonOptions { Generated = 20 }).Compared);
    }

    private static PackComparison Compare(string changed, SourceFile[] scenarios, ComparisonOptions? options = null) =>
        PackComparison.Of(TinyPack.Engine, [], TinyPack.Load(changed), scenarios, options, TestContext.Current.CancellationToken);
}
