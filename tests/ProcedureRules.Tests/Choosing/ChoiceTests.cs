using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using ProcedureRules.Tests.Planning;
using Xunit;

namespace ProcedureRules.Tests.Choosing;

public sealed class ChoiceTests
{
    [Fact]
    public void Plan_RanksDiffer_LowerRankBeatsLessLabour()
    {
        var plan = Ways(("long_way", 1, null), ("short_way", 2, null)).Plan();

        Assert.Equal(["long_way(engine)"], plan.Ids());
        var choice = Assert.Single(plan.Choices);
        Assert.Equal("ranks behind the way taken", choice.Ways[1].WhyNot!.ToString());
    }

    [Fact]
    public void Plan_RanksEqual_LessLabourIsTakenAndTheOtherPriced()
    {
        var plan = Ways(("long_way", 1, null), ("short_way", 1, null)).Plan();

        Assert.Equal(["short_way(engine)"], plan.Ids());
        var way = Assert.Single(plan.Choices).Ways[0];
        Assert.Equal(Quantity.Between(3600, 5400, Dimension.Duration), way.Labour);
        Assert.Contains("would take longer", way.WhyNot!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_WorkShared_CountsOnce()
    {
        // The short way alone is shorter; but the long way's work is to be done anyway.
        var shop = Ways(("long_way", 1, null), ("short_way", 1, null)).Do("long_way", "engine");

        Assert.Equal(["long_way(engine)"], shop.Plan().Ids());
    }

    [Fact]
    public void Plan_WayForbidden_AnotherIsTaken()
    {
        var plan = Ways(("long_way", 2, null), ("short_way", 1, null)).Forbid("short_way", "engine").Plan();

        Assert.Equal(["long_way(engine)"], plan.Ids());
        Assert.Contains("may not be done", Assert.Single(plan.Choices).Ways[1].WhyNot!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_WayLeadsToForbiddenStep_AnotherIsTaken()
    {
        var shop = Ways(("long_way", 2, null), ("short_way", 1, null));
        shop.Aspect("cover.place", "fitted", "off");
        shop.Part("cover", "cover");
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off").Needs("short_way", "cover.place", "off").Forbid("remove_cover", "cover");

        Assert.Equal(["long_way(engine)"], shop.Plan().Ids());
    }

    [Fact]
    public void Plan_PossiblyForbidden_CountsAsForbidden()
    {
        var shop = Ways(("long_way", 2, null), ("short_way", 1, null));
        var rusty = shop.YesNo("engine", "rusty");

        Assert.Equal(["long_way(engine)"], shop.Forbid("short_way", "engine", Shop.Yes(rusty)).Plan().Ids());
    }

    [Fact]
    public void Plan_EveryWayForbidden_StopsAndSaysWhyOfEach()
    {
        var plan = Ways(("long_way", 1, null), ("short_way", 1, null)).Forbid("short_way", "engine").Forbid("long_way", "engine").Plan();

        Assert.Empty(plan.Steps);
        Assert.Equal(["forbid long_way engine", "forbid short_way engine"], plan.Stops.Select(stop => stop.Reason.Rule).Order(StringComparer.Ordinal));
        Assert.All(plan.Stops, stop => Assert.True(stop.IsSure));
        Assert.All(plan.Stops, stop => Assert.Contains("may not be done", stop.Text.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_NeedForbidden_ForbidBeatsNeed()
    {
        var stop = Assert.Single(Shops.Starter().Forbid("disconnect_ground", "battery").Plan().Stops);

        Assert.Contains("disconnect ground", stop.Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_IfNotKnown_WayIsShownNotTaken()
    {
        var shop = Ways();
        var loose = shop.YesNo("engine", "loose");
        shop.OneOf("a way", "engine", ("short_way", 1, Shop.Yes(loose)), ("long_way", 2, null));

        var plan = shop.Plan();

        Assert.Equal(["long_way(engine)"], plan.Ids());
        var way = Assert.Single(plan.Choices).Ways[0];
        Assert.Equal(Quantity.Between(600, 900, Dimension.Duration), way.Labour);
        Assert.Contains("open only if", way.WhyNot!.ToString(), StringComparison.Ordinal);
        Assert.Equal("engine.loose", Assert.Single(plan.Questions).Id);
    }

    [Fact]
    public void Plan_IfAnswered_WayIsTaken()
    {
        var shop = Ways();
        var loose = shop.YesNo("engine", "loose");
        shop.OneOf("a way", "engine", ("short_way", 1, Shop.Yes(loose)), ("long_way", 2, null)).Says(loose, Value.Of(true));

        Assert.Equal(["short_way(engine)"], shop.Plan().Ids());
    }

    [Fact]
    public void Plan_OnlyWayMayBeOpen_PlanHoldsAndAsks()
    {
        var shop = Ways();
        var loose = shop.YesNo("engine", "loose");
        shop.OneOf("a way", "engine", ("short_way", 1, Shop.Yes(loose)));

        var plan = shop.Plan();

        Assert.Empty(plan.Steps);
        Assert.Empty(plan.Stops);
        Assert.Equal(["engine.loose"], Assert.Single(plan.Holds).Questions);
    }

    [Fact]
    public void Plan_NoWayOpen_Stops()
    {
        var shop = Ways();
        var loose = shop.YesNo("engine", "loose");
        shop.OneOf("a way", "engine", ("short_way", 1, Shop.Yes(loose))).Says(loose, Value.Of(false));

        Assert.Contains("no way is left", Assert.Single(shop.Plan().Stops).Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_SeveralOperationsReachAState_TheShorterIsTaken()
    {
        var shop = new Shop();
        shop.Aspect("engine.hold", "none", "jack", "hoist");
        shop.Aspect("mount.joint", "fastened", "free");
        shop.Part("engine", "engine");
        shop.Part("mount", "mount");
        shop.Pair("hoist_engine", "unhook_engine", "engine", "hold: none -> hoist", minutes: 40)
            .Pair("jack_engine", "release_jack", "engine", "hold: none -> jack", minutes: 5)
            .Pair("free_mount", "fasten_mount", "mount", "joint: fastened -> free")
            .Needs("free_mount", "engine.hold", "jack|hoist").Needs("fasten_mount", "engine.hold", "jack|hoist").Do("free_mount", "mount");

        Assert.Equal(["jack_engine(engine)", "free_mount(mount)", "fasten_mount(mount)", "release_jack(engine)"], shop.Plan().Ids());
    }

    private static Shop Ways(params (string, int, Test?)[] ways)
    {
        var shop = new Shop();
        shop.Part("engine", "engine");
        shop.Operation("long_way", "engine", "", minutes: 60, phase: Phase.Work);
        shop.Operation("short_way", "engine", "", minutes: 10, phase: Phase.Work);
        return ways.Length == 0 ? shop : shop.OneOf("a way", "engine", ways);
    }
}
