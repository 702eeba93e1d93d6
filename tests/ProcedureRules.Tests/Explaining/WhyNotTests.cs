using ProcedureRules.Explaining;
using ProcedureRules.Logic;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Explaining;

public class WhyNotTests
{
    [Fact]
    public void Of_ACautionOfAnotherThread_NamesItsRuleTheConditionAndTheFactThatWouldBringIt()
    {
        var answer = Ask("oil-pan", "Left-hand thread");
        var rule = Assert.Single(answer.Rules);
        Assert.Equal("a left-hand nut is turned the other way", rule.Rule);
        Assert.Equal("common practice", rule.Basis);
        var condition = Assert.Single(rule.Conditions, condition => condition.Holds == Truth.No);
        Assert.Contains("thread: right hand nut", Assert.Single(condition.Read).ToString(), StringComparison.Ordinal);
        var change = Assert.Single(answer.Change);
        Assert.Equal(("fan.thread", "left hand nut"), (change.Id, change.Text.ToString()));
    }

    [Fact]
    public void Of_ARaisingThatIsNotNeeded_TellsTheGapBelowWhichItWouldBe()
    {
        var change = Assert.Single(Ask("oil-pan-pickup", "raise_engine(engine)").Change);
        Assert.Equal("oil_pan.drop_available", change.Id);
        Assert.StartsWith("below", change.Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AWayNotTaken_TellsTheWayTakenAndWhatForbidsIt()
    {
        var answer = Ask("oil-pan", "jack_under_pan(engine)");
        Assert.Contains("boss of the block", Assert.Single(answer.NotTaken).ToString(), StringComparison.Ordinal);
        Assert.Contains(answer.ForbiddenBy, reason => reason.Text.ToString().Contains("dented", StringComparison.Ordinal));
        Assert.Distinct(answer.ForbiddenBy.Select(reason => (reason.Rule, reason.Text.ToString())));
    }

    [Fact]
    public void Of_WhatNoPartFits_ShowsWhichConditionFindsNothing()
    {
        var answer = Ask("oil-change", "raise_engine");
        Assert.NotEmpty(answer.Rules);
        Assert.Contains(answer.Rules, rule => rule.Conditions.Any(condition => condition.Holds == Truth.No));
        Assert.Contains(answer.Rules.SelectMany(rule => rule.Conditions), condition => condition.Text.ToString().StartsWith("some step is such that: ", StringComparison.Ordinal));
        Assert.Empty(answer.Change);
        Assert.NotEqual(ChangeSearch.Unfinished, answer.Search);
    }

    [Theory]
    [InlineData("no such thing")]
    [InlineData("")]
    [InlineData("raise_engine(wing)")]
    [InlineData("raise_engine(engine)")] // the plan has it
    public void Of_WhatIsInThePlanOrNowhere_IsNoAnswer(string item)
    {
        var session = Shipped.Open("oil-pan");
        Assert.Null(WhyNot.Of(Shipped.PlanOf(session), session.Beliefs, item, TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("oil-pan", "Left-hand thread")]
    [InlineData("oil-pan", "part_steering_link(steering_link)")]
    [InlineData("oil-pan-pickup", "raise_engine(engine)")]
    [InlineData("oil-pan", "raise_engine(engine)", "oil_pan.drop_available=6 in")]
    public void Change_ThatIsTold_ReallyBringsTheItemIn(string order, string item, params string[] statements)
    {
        var answer = Ask(order, item, statements);
        Assert.NotEmpty(answer.Change);

        var supposed = Shipped.Open(order, statements);
        foreach (var change in answer.Change) Assert.Empty(supposed.State(change.Statement));

        Assert.NotEmpty(Why.Of(Shipped.PlanOf(supposed), item));
    }

    // What is asked for is not in the job at all.
    [Theory]
    [InlineData("oil-pan", "renew_starter(starter)")]
    [InlineData("oil-change", "raise_engine")]
    public void Change_ThatNoFactCanBring_IsProvenNotSearched(string order, string item)
    {
        var answer = Ask(order, item);
        Assert.Equal(ChangeSearch.Impossible, answer.Search);
        Assert.Equal(0, answer.Tried);
    }

    // Whatever is known, the rod does as well and takes less: unless something may forbid it, or it brings work of its own.
    [Theory]
    [InlineData("", ChangeSearch.Impossible, "")]
    [InlineData("- {rule: soft floor, for: {s: step}, when: [ s does prop_on_rod ], then: [ {warning: It slips.} ], because: It slips., basis: none}", ChangeSearch.Impossible, "")]
    [InlineData("- {rule: bent, for: {p: panel, s: step}, when: [ s does prop_on_rod, s on p, p.rusty is yes ], then: [ {forbid: s} ], because: It tears out., basis: none}", ChangeSearch.Found, "door.rusty")]
    [InlineData("- {rule: cover, for: {p: panel, s: step}, when: [ s does prop_on_rod, s on p, p.rusty is yes ], then: [ {need: p.seat is bare} ], because: It is in the way., basis: none}", ChangeSearch.NoneOfTwo, "")]
    public void Change_ToAWayThatAnotherAlwaysOutdoes_IsProvenNotSearched(string rule, ChangeSearch search, string fact)
    {
        var session = OnePack.Open(
            $$$"""
            pack: panels
            version: 1.0.0
            about: A panel that is propped in one way or another.
            places: [ bay ]
            kinds: {vehicle: {}, panel: {}}
            aspects:
              panel.prop: {states: [bare, propped], normal: bare}
              panel.seat: {states: [covered, bare], normal: covered}
            facts: {panel.rusty: {type: yes_no, ask: "Is the {it} rusty?"}}
            operations:
              prop_on_rod: {on: panel, text: "Prop the {it} on a rod", change: {prop: bare -> propped}, undo: take_rod, place: bay, time: 2..4 min}
              take_rod: {on: panel, text: "Take the rod away", time: 1 min}
              prop_on_stand: {on: panel, text: "Prop the {it} on a stand", change: {prop: bare -> propped}, undo: take_stand, place: bay, time: 3..6 min}
              take_stand: {on: panel, text: "Take the stand away", time: 1 min}
              bare_seat: {on: panel, text: "Bare the seat of the {it}", change: {seat: covered -> bare}, undo: cover_seat, place: bay, time: 10 min}
              cover_seat: {on: panel, text: "Cover the seat of the {it}", time: 10 min}
            jobs: {look: {on: panel, text: "Look behind the {it}", pass: [ it.prop is propped ]}}
            rules:
              - {rule: rust, for: {p: panel, s: step}, when: [ s does prop_on_stand, s on p, p.rusty is yes ], then: [ {caution: It tears.} ], because: It is rusty., basis: none}
              {{{rule}}}
            """,
            "door: panel", "look", "door.rusty=no");
        foreach (var item in search == ChangeSearch.Impossible ? new[] { "prop_on_stand(door)", "take_stand" } : ["prop_on_stand(door)"])
        {
            var answer = Assert.IsType<WhyNotAnswer>(WhyNot.Of(Shipped.PlanOf(session), session.Beliefs, item, TestContext.Current.CancellationToken));
            Assert.Equal((search, search != ChangeSearch.Impossible), (answer.Search, answer.Tried > 0));
            Assert.Equal(fact, string.Join(' ', answer.Change.Select(change => change.Id)));
        }
    }

    private static WhyNotAnswer Ask(string order, string item, params string[] statements)
    {
        var session = Shipped.Open(order, statements);
        return Assert.IsType<WhyNotAnswer>(WhyNot.Of(Shipped.PlanOf(session), session.Beliefs, item, TestContext.Current.CancellationToken));
    }
}
