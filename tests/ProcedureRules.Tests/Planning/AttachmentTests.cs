using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Planning;

public sealed class AttachmentTests
{
    [Fact]
    public void Plan_NeedOnlyPossible_StepIsProvisionalAndItsQuestionAsked()
    {
        var shop = Shops.Starter();
        shop.Aspect("cover.place", "fitted", "off");
        shop.Part("cover", "cover");
        var traps = shop.YesNo("starter", "traps_cover");
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off").Needs("remove_starter", "cover.place", "off", Shop.Yes(traps));

        var plan = shop.Plan();

        plan.Follows("remove_cover(cover)", "remove_starter(starter)");
        Assert.Equal("starter traps cover is yes", Assert.Single(plan.Step("remove_cover(cover)").Provisional).ToString());
        Assert.NotEmpty(plan.Step("fit_cover(cover)").Provisional);
        Assert.Empty(plan.Step("remove_starter(starter)").Provisional);
        Assert.Equal("starter.traps_cover", Assert.Single(plan.Questions).Id);
        Assert.Equal(Quantity.Between((5 + 5 + 10 + 10 + 30 + 30 + 10) * 60, (5 + 5 + 10 + 10 + 30 + 30 + 10 + 10 + 10) * 90, Dimension.Duration), plan.Labour);
    }

    [Fact]
    public void Plan_FigureNotStated_HoldsAtTheStepAndAsks()
    {
        var shop = Shops.Starter();
        var torque = shop.Torque("starter", "bolt_torque");
        shop.About("fit_starter", Shop.Figure(torque));

        var plan = shop.Plan();

        Assert.Equal(["starter.bolt_torque"], Assert.Single(plan.Step("fit_starter(starter)").Holds).Questions);
        Assert.Empty(plan.Step("remove_starter(starter)").Holds);
        Assert.Equal("starter.bolt_torque", Assert.Single(plan.Questions).Id);
    }

    [Theory]
    [InlineData(Source.Assumed, true)]
    [InlineData(Source.Estimated, true)]
    [InlineData(Source.Stated, false)]
    [InlineData(Source.Measured, false)]
    public void Plan_FigureFromASource_HoldsBelowStated(Source source, bool holds)
    {
        var shop = Shops.Starter();
        var torque = shop.Torque("starter", "bolt_torque");
        shop.About("fit_starter", Shop.Figure(torque)).Says(torque, Value.Of(torque.Fact.Type, Quantity.Of(40, "N.m")), source);

        Assert.Equal(holds, shop.Plan().Step("fit_starter(starter)").Holds.Count > 0);
    }

    [Fact]
    public void Plan_RemedyNotSure_IsHeldNotPlanned()
    {
        var shop = Shops.Starter();
        var worn = shop.YesNo("starter", "worn_ring");
        shop.Operation("shim_starter", "starter", "", "under", phase: Phase.Work);
        shop.Do("shim_starter", "starter", Shop.Yes(worn));

        var plan = shop.Plan();

        Assert.DoesNotContain(plan.Ids(), id => id.StartsWith("shim", StringComparison.Ordinal));
        var hold = Assert.Single(plan.Holds);
        Assert.Contains("shim starter", hold.Text.ToString(), StringComparison.Ordinal);
        Assert.Equal(["starter.worn_ring"], hold.Questions);
    }

    [Theory]
    [InlineData(IfUnknown.Do, true)]
    [InlineData(IfUnknown.Hold, false)]
    public void Plan_DetailNotSure_IsShownUnlessItAsksToBeHeld(IfUnknown ifUnknown, bool isShown)
    {
        var shop = Shops.Starter();
        var worn = shop.YesNo("starter", "worn_ring");
        shop.About("remove_starter", new Conclusion.Detail(0, Shop.Say("mark the worn place")) { IfUnknown = ifUnknown }, Shop.Yes(worn));

        Assert.Equal(isShown, shop.Plan().Step("remove_starter(starter)").Detail.Count > 0);
    }

    [Fact]
    public void Plan_CautionAtAMoment_StandsOnlyWhereTheMomentHolds()
    {
        var shop = Shops.Mounts();
        shop.About("free_mount", Shop.Caution("hands clear"), at: ("engine.hold", "jack"));
        shop.About("remove_pan", Shop.Caution("only the jack"), at: ("engine.hold", "jack"));

        var plan = shop.Plan();

        Assert.Equal("hands clear", Assert.Single(plan.Step("free_mount(left_mount)").Cautions).Text.ToString());
        Assert.Empty(plan.Step("remove_pan(pan)").Cautions);
    }

    [Fact]
    public void Plan_CautionOnlyPossible_IsShown()
    {
        var shop = Shops.Starter();
        var hot = shop.YesNo("starter", "hot");
        shop.About("remove_starter", Shop.Caution("hot"), Shop.Yes(hot)).Head("stay safe");

        var plan = shop.Plan();

        Assert.Equal("hot", Assert.Single(plan.Step("remove_starter(starter)").Cautions).Text.ToString());
        Assert.Equal("stay safe", Assert.Single(plan.Cautions).Text.ToString());
        Assert.Equal(Signal.Danger, plan.Cautions[0].Signal);
    }

    [Fact]
    public void Plan_Wait_StandsAtTheLaterStepWithTheEarliersId()
    {
        var wait = Assert.Single(Shops.Starter().Wait("remove_starter", "fit_starter", 30).Plan().Step("fit_starter(starter)").Waits);

        Assert.Equal("remove_starter(starter)", wait.AfterStep);
        Assert.Equal(Quantity.Point(1800, Dimension.Duration), wait.Least);
    }

    [Fact]
    public void Plan_WaitWhoseFirstComesLater_IsNone() =>
        Assert.All(Shops.Starter().Wait("fit_starter", "remove_starter", 30).Plan().Steps, step => Assert.Empty(step.Waits));

    [Theory]
    [InlineData(null, true)]
    [InlineData(1, true)]
    [InlineData(5, false)]
    public void Plan_WaitSinceAnEvent_StandsUntilItIsSurelyOver(int? hours, bool stands)
    {
        var shop = Shops.Starter();
        var age = shop.Hours("vehicle", "since_run");
        if (hours is { } known) shop.Says(age, Value.Of(age.Fact.Type, Quantity.Of(known, "h")));
        var least = new ValueExpression
        {
            Text = "2 h",
            Type = age.Fact.Type,
            Evaluate = (_, _) => Value.Of(age.Fact.Type, Quantity.Of(2, "h")),
            Reads = (_, _) => [],
        };
        shop.About("raise_vehicle", new Conclusion.Wait(-1, 0, least, null, Shop.Say("let it cool"), (1, age.Fact)) { IfUnknown = IfUnknown.Do });

        var waits = shop.Plan().Step("raise_vehicle(vehicle)").Waits;

        Assert.Equal(stands, waits.Count == 1);
        Assert.All(waits, wait => Assert.Null(wait.AfterStep));
    }

    [Fact]
    public void Plan_Stop_HasNoStepsAndSaysWhetherItIsSure()
    {
        var shop = Shops.Starter();
        var cracked = shop.YesNo("starter", "cracked");
        shop.Stop("do not drive", Shop.Yes(cracked));

        var plan = shop.Plan();

        Assert.Empty(plan.Steps);
        Assert.False(Assert.Single(plan.Stops).IsSure);
        Assert.Equal("starter.cracked", plan.Questions[0].Id);
        Assert.True(Assert.Single(shop.Says(cracked, Value.Of(true)).Plan().Stops).IsSure);
    }

    [Fact]
    public void Plan_StateThatNothingLeadsTo_Stops()
    {
        var shop = Shops.Starter();
        shop.Aspect("exhaust.place", "fitted", "off");
        shop.Part("exhaust", "exhaust");
        shop.Needs("remove_starter", "exhaust.place", "off");

        var stop = Assert.Single(shop.Plan().Stops);

        Assert.Contains("nothing on this vehicle leads to exhaust.place is off", stop.Text.ToString(), StringComparison.Ordinal);
        Assert.Equal("remove_starter needs exhaust.place off", stop.Reason.Rule);
    }

    [Fact]
    public void Plan_AssumedFactBehindAStep_IsListed()
    {
        var shop = Shops.Starter();
        shop.Aspect("cover.place", "fitted", "off");
        shop.Part("cover", "cover");
        var traps = shop.YesNo("starter", "traps_cover");
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off")
            .Needs("remove_starter", "cover.place", "off", Shop.Yes(traps)).Says(traps, Value.Of(true), Source.Assumed);

        var plan = shop.Plan();

        var assumption = Assert.Single(plan.Assumptions);
        Assert.Equal("starter traps cover: yes", assumption.Text.ToString());
        Assert.Contains("remove_cover(cover)", assumption.Steps);
        Assert.Empty(plan.Step("remove_cover(cover)").Provisional);
    }

    [Fact]
    public void Plan_Reasons_SayWhatTheStepIsFor()
    {
        var plan = Shops.Starter().Plan();

        Assert.Contains(plan.Step("disconnect_ground(battery)").Because, reason => reason.Rule == "remove_starter needs battery.ground off");
        Assert.Equal("put back", Assert.Single(plan.Step("connect_ground(battery)").Because).Rule);
    }

    [Fact]
    public void Plan_Check_CarriesItsVerdict()
    {
        var shop = Shops.Starter();
        var gap = shop.YesNo("starter", "gap_right");
        shop.About("fit_starter", new Conclusion.Check(0, Shop.Yes(gap), Shop.Say("gap right"), true) { IfUnknown = IfUnknown.Do });

        var check = Assert.Single(shop.Plan().Step("fit_starter(starter)").Checks);

        Assert.Equal(Truth.Unknown, check.Verdict);
        Assert.True(check.During);
    }

    [Fact]
    public void Plan_PartThatMayBeThere_IsAskedForAndItsWorkProvisional()
    {
        var shop = Shops.Starter();
        shop.Aspect("cover.place", "fitted", "off");
        shop.Part("cover", "cover", Truth.Unknown);
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off").Needs("remove_starter", "cover.place", "off");

        var plan = shop.Plan();

        Assert.Equal("the vehicle has the cover", Assert.Single(plan.Step("remove_cover(cover)").Provisional).ToString());
        Assert.Equal("part cover", Assert.Single(plan.Questions).Id);
    }
}
