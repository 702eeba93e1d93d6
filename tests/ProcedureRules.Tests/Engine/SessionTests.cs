using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using Xunit;

namespace ProcedureRules.Tests.Engine;

/// <summary>A session from outside: state, replace, withdraw, record, plan again.</summary>
public class SessionTests
{
    // Readings, relations, parts and states, as a technician would say them one after the other.
    private static readonly string[] Sayings =
    [
        "oil_pan.drop_available=6 in", "oil_pan.drop_available=2 in", "oil_pan.drop_available=unknown", "oil_pan.drop_needed=3..4 in",
        "oil_pan.condition=sound", "oil_pan.condition=unknown", "fan_shroud.pieces=two_piece", "fan_shroud.pieces=one_piece",
        "traps(starter, dust_cover)=no", "traps(starter, dust_cover)=unknown", "traps(starter, dust_cover)=yes",
        "heater_hose.gap=1 in", "heater_hose.gap=4 in", "part starter=no", "part starter=yes", "vehicle.lift_at_hand=no",
        "oil_pan.bolt_torque=unknown", "vehicle.hoist_at_hand=yes",
    ];

    [Fact]
    public void State_AChangedFact_ChangesThePlanThatFollows()
    {
        var session = Shipped.Open("oil-pan");
        Assert.Contains(Shipped.PlanOf(session).Steps, step => step.Id == "raise_engine(engine)");

        Assert.Empty(session.State("oil_pan.drop_available=6 in"));

        Assert.DoesNotContain(Shipped.PlanOf(session).Steps, step => step.Id == "raise_engine(engine)");
    }

    [Fact]
    public void Withdraw_WhatWasStated_BringsTheFormerPlanBack()
    {
        var session = Shipped.Open("oil-pan");
        var before = Text(session);
        var key = session.Situation.Observations.First(observation => observation.Fact.ToString() == "oil_pan.drop_available").Fact;
        session.State("oil_pan.drop_available=6 in");
        Assert.NotEqual(before, Text(session));

        session.Withdraw(key);

        Assert.Equal(before, Text(session));
    }

    [Property(MaxTest = 12)]
    public Property Plan_AfterAnySequenceOfStatements_EqualsPlanningFromScratch() => Prop.ForAll(
        Gen.ArrayOf(Gen.Elements(Sayings)).Resize(6).ToArbitrary(),
        sayings =>
        {
            var running = Shipped.Open("oil-pan");
            foreach (var saying in sayings)
            {
                running.State(saying);
                running.Plan(TestContext.Current.CancellationToken);
            }
            var fresh = Shipped.Open("oil-pan");
            foreach (var saying in sayings) fresh.State(saying);
            return Text(running) == Text(fresh);
        });

    [Property(MaxTest = 300)]
    public bool State_AnyText_ComplainsAndNeverThrows(string text)
    {
        var session = Shipped.Open("oil-change");
        session.State(text);
        return session.Situation is not null;
    }

    [Fact]
    public async Task Engine_SessionsOnManyThreads_AllPlanTheSame()
    {
        var expected = Text(Shipped.Open("oil-pan"));
        var plans = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => Text(Shipped.Open("oil-pan")))));
        Assert.All(plans, plan => Assert.Equal(expected, plan));
    }

    [Theory]
    [InlineData("oil-pan-pickup")]
    [InlineData("battery")]
    [InlineData("starter")]
    [InlineData("clutch-plate")]
    [InlineData("exhaust-section")]
    [InlineData("contact-reel")]
    public void Record_StepAfterStep_LeadsToTheEnd(string order)
    {
        var session = Shipped.Open(order);
        var before = Shipped.PlanOf(session);
        for (var done = 0; done <= before.Steps.Count; done++)
        {
            var plan = Shipped.PlanOf(session);
            if (plan.Steps.Count == 0) return;
            Assert.Empty(session.Record(plan.Steps[0]));
        }
        Assert.Fail($"Steps are left: {string.Join(", ", Shipped.PlanOf(session).Steps.Select(step => step.Id))}");
    }

    [Fact]
    public void Record_OfWorkThatTheJobAsksForOnce_IsNotPlannedAgainUntilItsMarkIsGone()
    {
        var session = Shipped.Open("clutch-plate");
        var look = Shipped.PlanOf(session).Steps.First(step => step.Id.StartsWith("inspect_shaft_end", StringComparison.Ordinal));

        Assert.Empty(session.Record(look));
        Assert.DoesNotContain(Shipped.PlanOf(session).Steps, step => step.Id == look.Id);

        Assert.Empty(session.State("clutch_hub.shaft_end=unseen"));
        Assert.Contains(Shipped.PlanOf(session).Steps, step => step.Id == look.Id);
    }

    private static string Text(ProcedureSession session)
    {
        var result = session.Plan(TestContext.Current.CancellationToken);
        return result.Plan is { } plan ? PlanJson.Write(plan, UnitSystem.Us) : string.Concat(result.Diagnostics);
    }
}
