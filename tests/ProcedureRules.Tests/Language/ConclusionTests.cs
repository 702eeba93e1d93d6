using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Each kind of conclusion as compiled, with what the plan does by default where it is possible but not sure.</summary>
public class ConclusionTests
{
    private const string Steps = "s: step, t: step";
    private const string When = "s on oil_pan, t on starter";

    [Theory]
    [InlineData("need: \"engine.hold is [jack, hoist]\", at: t", 1, 0b0110, IfUnknown.BehindCheck)]
    [InlineData("need: engine.hold is not jack, at: s", 0, 0b1101, IfUnknown.BehindCheck)]
    [InlineData("end: engine.hold is mounts", -1, 0b0001, IfUnknown.Hold)]
    public void NeedOrEnd_OfAState_HasItsStepAndStates(string then, int step, int states, IfUnknown ifUnknown)
    {
        var need = Conclude<Conclusion.Need>(then);
        Assert.Equal((step, (ulong)states, ifUnknown), (need.Step, need.State.States.Bits, need.IfUnknown));
    }

    [Fact]
    public void Order_OfTwoSteps_NamesBoth() =>
        Assert.Equal(new Conclusion.Order(0, 1) { IfUnknown = IfUnknown.Do }, Conclude<Conclusion.Order>("order: s before t"));

    [Fact]
    public void Forbid_OfStepWorkAndState_AreThreeKinds()
    {
        Assert.Equal(1, Conclude<Conclusion.ForbidStep>("forbid: t").Step);
        Assert.Equal("remove_pan", Conclude<Conclusion.ForbidWork>("forbid: remove_pan(oil_pan)").Operation.Name);
        Assert.Equal("hold", Conclude<Conclusion.ForbidState>("forbid: engine.hold is jack").State.Aspect.Name);
    }

    [Fact]
    public void Do_BesideSteps_HasItsNeighbours()
    {
        var work = Conclude<Conclusion.Do>("do: clean(oil_pan), before: t, after: s");
        Assert.Equal(("clean", 2, 1, 0, IfUnknown.Hold), (work.Operation.Name, work.Slot, work.Before, work.After, work.IfUnknown));
        var alone = Conclude<Conclusion.Do>("do: clean(oil_pan)");
        Assert.Equal((-1, -1), (alone.Before, alone.After));
    }

    [Fact]
    public void Offer_WithText_KeepsIt()
    {
        Assert.Equal("while it is off", Conclude<Conclusion.Offer>("offer: clean(oil_pan), text: while it is off").Text?.Text);
        Assert.Null(Conclude<Conclusion.Offer>("offer: clean(oil_pan)").Text);
    }

    [Fact]
    public void OneOf_WithOptions_KeepsRankConditionAndConclusions()
    {
        var choice = Conclude<Conclusion.OneOf>(
            "one_of: [ {option: Drop it, rank: 1, if: oil_pan.drop > 2 in, then: [ {need: engine.hold is jack, at: s} ]}, {option: Lift it, rank: 2} ]");
        Assert.Equal(IfUnknown.BehindCheck, choice.IfUnknown);
        Assert.Equal(["Drop it", "Lift it"], choice.Options.Select(option => option.Text.Text));
        Assert.Equal([1, 2], choice.Options.Select(option => option.Rank));
        Assert.Equal(["oil_pan.drop > 2 in", null], choice.Options.Select(option => option.If?.Text));
        Assert.IsType<Conclusion.Need>(Assert.Single(choice.Options[0].Then));
        Assert.Empty(choice.Options[1].Then);
    }

    [Theory]
    [InlineData("set: {oil_pan.needed: oil_pan.drop + 1 in}", "2 in", "3 in")]
    [InlineData("set: {oil_pan.needed: oil_pan.drop + 1 in}", "0..2 in", "1..3 in")]
    [InlineData("set: {fan_shroud.rust: \"if(oil_pan.drop > 1 in, light, heavy)\"}", "2 in", "light")]
    [InlineData("set: {fan_shroud.rust: \"if(oil_pan.drop > 1 in, light, heavy)\"}", "0..2 in", "light|heavy")]
    [InlineData("set: {fan_shroud.fixed: oil_pan.drop > 1 in}", "2 in", "yes")]
    [InlineData("set: {fan_shroud.fixed: oil_pan.drop > 1 in}", "0..2 in", "no|yes")]
    [InlineData("set: {fan_shroud.fixed: not oil_pan.dented}", "2 in", "no|yes")]
    [InlineData("set: {oil_pan.bolts: 12}", "2 in", "12")]
    public void Set_OfAValue_IsEvaluatedInTheFactsType(string then, string drop, string expected)
    {
        var (rules, rule) = Compiled(then);
        var set = Assert.IsType<Conclusion.Set>(rule.Conclusions[0]);
        var beliefs = new SupposedBeliefs().With(rules.Vocabulary, "oil_pan.drop", drop);
        var value = set.Value.Evaluate(beliefs, SupposedBeliefs.Bind(rules, rule));
        Assert.Equal(expected, value.Type.IsQuantity ? value.Quantity.ToDisplay(UnitSystem.Us) : string.Join('|', value.Type.Words.Where((_, i) => (value.Words >> i & 1) != 0)));
        Assert.Same(set.Fact.Type, set.Value.Type);
    }

    [Theory]
    [InlineData("at_least", false)]
    [InlineData("at_most", true)]
    public void Demand_OnAFact_KnowsItsSide(string keyword, bool isAtMost)
    {
        var demand = Conclude<Conclusion.Demand>($"{keyword}: {{engine.rise: 2 in}}");
        Assert.Equal(("rise", isAtMost, IfUnknown.Do), (demand.Fact.Name, demand.IsAtMost, demand.IfUnknown));
    }

    [Fact]
    public void Relate_OfTwoParts_NamesThemInOrder()
    {
        var relate = Conclude<Conclusion.Relate>("relate: \"covers(starter, oil_pan)\"");
        Assert.Equal(("covers", 3, 2), (relate.Relation.Name, relate.First, relate.Second));
    }

    [Theory]
    [InlineData("danger", Signal.Danger)]
    [InlineData("warning", Signal.Warning)]
    [InlineData("caution", Signal.Caution)]
    [InlineData("notice", Signal.Notice)]
    public void SignalWord_AtAStep_IsACaution(string keyword, Signal signal)
    {
        var caution = Conclude<Conclusion.Caution>($"{keyword}: Mind the pan, at: t");
        Assert.Equal((1, signal, "Mind the pan"), (caution.Step, caution.Signal, caution.Text.Text));
    }

    [Fact]
    public void SignalWord_WithoutAnyStep_StandsAtTheHeadOfThePlan() =>
        Assert.Equal(-1, Assert.IsType<Conclusion.Caution>(Rule("", "oil_pan.dented", "danger: x").Conclusions[0]).Step);

    [Fact]
    public void Check_WithText_KeepsItAndItsLimits()
    {
        var check = Conclude<Conclusion.Check>("check: oil_pan.gap > 0.25 in, at: s, text: Look at the gap, during: yes");
        Assert.Equal((0, "oil_pan.gap > 0.25 in", "Look at the gap", true), (check.Step, check.Limits.Text, check.Text.Text, check.During));
    }

    [Theory]
    [InlineData("oil_pan.gap > 0.25 in", "Oil pan gap more than 0.25 in")]
    [InlineData("oil_pan.gap is 0.1..0.25 in", "Oil pan gap within 0.1..0.25 in")]
    [InlineData("oil_pan.gap is not 0.1..0.25 in and oil_pan.drop >= 1 in", "Oil pan gap outside 0.1..0.25 in and oil pan drop at least 1 in")]
    [InlineData("fan_shroud.pieces is [one_piece, none]", "Fan shroud pieces one piece or none")]
    [InlineData("fan_shroud.pieces is not one_piece", "Fan shroud pieces not one piece")]
    [InlineData("not oil_pan.dented", "not: oil pan dented")]
    [InlineData("min(oil_pan.gap, oil_pan.drop) < -1 in + oil_pan.needed", "min (oil pan gap, oil pan drop) less than -1 in + oil pan needed")]
    public void Check_WithoutText_IsPutIntoWords(string limits, string expected)
    {
        var (rules, rule) = Compiled($"check: \"{limits}\", at: s");
        var check = Assert.IsType<Conclusion.Check>(rule.Conclusions[0]);
        Assert.Equal(expected, check.Text.Render(new SupposedBeliefs(), SupposedBeliefs.Bind(rules, rule), UnitSystem.Us));
    }

    [Fact]
    public void ToolSupplyDetail_AtAStep_KeepIt()
    {
        Assert.Equal(1, Conclude<Conclusion.Tool>("tool: Ratchet, at: t").Step);
        Assert.Equal(0, Conclude<Conclusion.Supply>("supply: Rag, at: s").Step);
        Assert.Equal("Slowly", Conclude<Conclusion.Detail>("detail: Slowly, at: s").Text.Text);
    }

    [Fact]
    public void Slower_AtAStep_KeepsItsFactor()
    {
        var slower = Conclude<Conclusion.Slower>("slower: 1.5..2, at: t");
        Assert.Equal((1, "1.5..2"), (slower.Step, slower.Factor.Text));
    }

    [Fact]
    public void Wait_BetweenSteps_HasItsBounds()
    {
        var wait = Conclude<Conclusion.Wait>("wait: {from: s, until: t, least: 8 h, most: 2 d, text: Let it cure}");
        Assert.Equal((0, 1, "8 h", "2 d", "Let it cure"), (wait.From, wait.Until, wait.Least?.Text, wait.Most?.Text, wait.Text?.Text));
        Assert.Null(wait.Since);
    }

    [Fact]
    public void Wait_SinceAnEvent_NamesItsFact()
    {
        var wait = Conclude<Conclusion.Wait>("wait: {since: engine.off_for, until: t, least: 2 h}");
        Assert.Equal((-1, 1, "off_for"), (wait.From, wait.Until, wait.Since?.Fact.Name));
        Assert.Null(wait.Most);
    }

    [Theory]
    [InlineData("for: worn(starter)", Speaks.For, false)]
    [InlineData("for: worn(starter), strength: strong", Speaks.For, true)]
    [InlineData("against: worn(starter), strength: weak", Speaks.Against, false)]
    [InlineData("exclude: worn(starter)", Speaks.Excludes, true)]
    public void Finding_OfACause_KnowsWhatItSays(string then, Speaks speaks, bool isStrong)
    {
        var finding = Conclude<Conclusion.Finding>(then);
        Assert.Equal(("worn", speaks, isStrong, IfUnknown.Hold), (finding.Cause.Name, finding.Speaks, finding.IsStrong, finding.IfUnknown));
    }

    [Fact]
    public void Stop_WithReason_KeepsIt() => Assert.Equal("Not on this lift", Conclude<Conclusion.Stop>("stop: Not on this lift").Text.Text);

    [Fact]
    public void IfUnknown_OfAConclusion_BeatsTheRules()
    {
        var (rules, bag) = Compile($"""
            rules:
              - rule: r
                for: {Braced("s: step")}
                when: [ s on oil_pan ]
                then: [ {Braced("need: engine.hold is jack, if_unknown: do")}, end: engine.hold is mounts ]
                if_unknown: behind_check
                because: x
                basis: common practice
            """);
        Assert.False(bag.HasErrors, bag.ToSnippets());
        Assert.Equal([IfUnknown.Do, IfUnknown.BehindCheck], rules.Rules[0].Conclusions.Select(conclusion => conclusion.IfUnknown));
    }

    private static string Braced(string text) => $"{{{text}}}";

    private static T Conclude<T>(string then)
        where T : Conclusion => Assert.IsType<T>(Assert.Single(Compiled(then).Rule.Conclusions));

    private static (RuleBase Rules, CompiledRule Rule) Compiled(string then)
    {
        var (rules, bag) = Compile(RuleText(Steps, When, $"{{{then}}}"));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        return (rules, rules.Rules[0]);
    }
}
