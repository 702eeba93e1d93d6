using ProcedureRules.Language;
using ProcedureRules.Packs;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>The rules that are made from operations, jobs and aspects.</summary>
public class DefinitionRulesTests
{
    private static readonly RuleBase Rules = Compile("").Rules;

    [Fact]
    public void Operation_WithNeedsAndTexts_GivesOneRuleForItselfAndOneForEachKindNamed() => Assert.Equal(
        [
            "operation remove_starter",
            "operation remove_starter (vehicle)",
            "operation remove_starter (oil_pan)",
        ],
        Names("operation remove_starter"));

    [Fact]
    public void Operation_ItsOwnRule_MatchesEveryStepThatDoesIt()
    {
        var rule = Find("operation remove_starter");
        Assert.Equal([(PredicateSort.Does, "remove_starter"), (PredicateSort.On, ""), (PredicateSort.Part, "starter")], Sorts(rule));
        Assert.Equal(["Need", "Tool", "Supply", "Detail"], rule.Conclusions.Select(conclusion => conclusion.GetType().Name));
        Assert.Equal("The {it} is in the way.", rule.Because?.Text);
        Assert.Equal("common practice", rule.Basis);
    }

    [Fact]
    public void Operation_NeedThatNamesAKind_IsOneInstanceForEachPartOfIt()
    {
        var rule = Find("operation remove_starter (vehicle)");
        Assert.Equal([(PredicateSort.Does, "remove_starter"), (PredicateSort.On, ""), (PredicateSort.Part, "starter"), (PredicateSort.Part, "vehicle")], Sorts(rule));
        var need = Assert.IsType<Conclusion.Need>(Assert.Single(rule.Conclusions));
        Assert.Equal((1, 2), (need.Step, need.State.Slot));
    }

    [Fact]
    public void Operation_ThatUndoes_HasTheNeedsOfItsStepButThoseOfTheWayOff() => Assert.Equal(
        ["operation fit_starter (vehicle)", "operation fit_starter (fan_shroud)"],
        Names("operation fit_starter"));

    [Fact]
    public void Operation_WithoutAnythingToSay_GivesNoRule() => Assert.Empty(Names("operation clean"));

    [Fact]
    public void Operation_FigureOfAnotherPart_IsItsFact()
    {
        var figure = Assert.IsType<Conclusion.Figure>(Find("operation remove_starter (oil_pan)").Conclusions[1]);
        Assert.Equal((1, 2, "torque"), (figure.Step, figure.Slot, figure.Fact.Name));
    }

    [Fact]
    public void Job_WithEndsAndWork_RestsOnItsBeingAskedFor()
    {
        var rule = Find("job replace_pan");
        Assert.Equal([(PredicateSort.Job, "replace_pan"), (PredicateSort.Part, "oil_pan")], Sorts(rule));
        Assert.Equal(["Need", "Waypoints", "Do", "Know"], rule.Conclusions.Select(conclusion => conclusion.GetType().Name));
        Assert.Equal(-1, Assert.IsType<Conclusion.Need>(rule.Conclusions[0]).Step);
        Assert.Equal(["Need", "Do"], Find("job replace_pan (starter)").Conclusions.Select(conclusion => conclusion.GetType().Name));
    }

    [Fact]
    public void Job_Variant_AddsItsTest()
    {
        var variant = Find("job replace_pan, variant 1");
        Assert.Equal("fan_shroud.pieces is one_piece", Assert.Single(variant.Tests).Text);
        Assert.Equal(["Need", "Do"], variant.Conclusions.Select(conclusion => conclusion.GetType().Name));
        Assert.All(variant.Conclusions, conclusion => Assert.Equal(IfUnknown.Hold, conclusion.IfUnknown));
    }

    [Fact]
    public void Job_WithoutConclusions_GivesNoRule() => Assert.Empty(Names("job inspect"));

    [Fact]
    public void While_OfAState_NamesThePartItselfOrAKind()
    {
        Assert.Equal(
            [("joint", 1, null, "hold", 0b1110UL), ("joint", 1, "vehicle", "height", 0b10UL)],
            Rules.Whiles.Select(condition => (condition.Aspect.Name, condition.State, condition.Other?.Name, condition.OtherAspect.Name, condition.States.Bits)));
        Assert.Equal("it.hold is [jack, hoist, blocks]", Rules.Whiles[0].Text);
    }

    private static IEnumerable<string> Names(string start) =>
        Rules.Rules.Select(rule => rule.Name).Where(name => name == start || name.StartsWith(start + " (", StringComparison.Ordinal));

    private static CompiledRule Find(string name) => Rules.Rules.Single(rule => rule.Name == name);

    private static IEnumerable<(PredicateSort, string)> Sorts(CompiledRule rule) => rule.Patterns.Select(pattern => (pattern.Predicate.Sort, pattern.Predicate.Name));
}
