using ProcedureRules.Packs;
using ProcedureRules.Tests.Planning;
using Xunit;

namespace ProcedureRules.Tests.Ordering;

public sealed class OrderTests
{
    [Fact]
    public void Plan_NeedOfTwoSteps_GroundCableComesOffFirstAndGoesOnLast()
    {
        var plan = Shops.Starter().Plan();

        plan.Follows("disconnect_ground(battery)", "remove_starter(starter)", "renew_starter(starter)", "fit_starter(starter)", "connect_ground(battery)");
        Assert.Equal(7, plan.Steps.Count);
    }

    [Fact]
    public void Plan_StepThatNeedsTheStateThatAnotherTakesAway_ComesBeforeIt()
    {
        // Case 14: the starter loosens the bolt, so the battery stays connected for that one step; by common practice, no source.
        var shop = Shops.Starter();
        shop.Mark("pulley.bolt", "tight", "loose");
        shop.Part("pulley", "pulley");
        shop.Operation("bump_bolt", "pulley", "bolt: tight -> loose");
        shop.Needs("bump_bolt", "battery.ground", "connected").Do("bump_bolt", "pulley").Order("bump_bolt", "remove_starter");

        var plan = shop.Plan();

        plan.Follows("bump_bolt(pulley)", "disconnect_ground(battery)", "remove_starter(starter)");
        Assert.Single(plan.Ids(), id => id.StartsWith("disconnect_ground", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_ProofThatNeedsANormalState_ComesAfterEverythingIsBack()
    {
        var shop = Shops.Starter();
        shop.Mark("vehicle.proof", "open", "proven");
        shop.Operation("run_engine", "vehicle", "proof: open -> proven", phase: Phase.Prove);
        shop.Needs("run_engine", "battery.ground", "connected").Do("run_engine", "vehicle");

        Assert.Equal("run_engine(vehicle)", shop.Plan().Ids()[^1]);
    }

    [Fact]
    public void Plan_JackHandsOverToBlocks_EngineIsHeldAtEveryMoment()
    {
        var plan = Shops.Mounts().Plan();

        plan.Follows("jack_engine(engine)", "free_mount(left_mount)", "raise_engine(engine)", "block_engine(engine)", "remove_pan(pan)",
            "fit_pan(pan)", "unblock_engine(engine)", "lower_engine(engine)", "fasten_mount(left_mount)", "release_jack(engine)");
        plan.Follows("jack_engine(engine)", "free_mount(right_mount)", "raise_engine(engine)");
        plan.Follows("lower_engine(engine)", "fasten_mount(right_mount)", "release_jack(engine)");
        Assert.Equal(12, plan.Steps.Count);
    }

    [Fact]
    public void Plan_StepsThatAreFreeToMove_GoBackInReverse()
    {
        var shop = new Shop();
        foreach (var name in new[] { "apron", "bracket", "cover" })
        {
            shop.Aspect($"{name}.place", "fitted", "off");
            shop.Part(name, name);
            shop.Pair($"remove_{name}", $"fit_{name}", name, "place: fitted -> off").Do($"remove_{name}", name);
        }

        Assert.Equal(
            ["remove_apron(apron)", "remove_bracket(bracket)", "remove_cover(cover)", "fit_cover(cover)", "fit_bracket(bracket)", "fit_apron(apron)"],
            shop.Plan().Ids());
    }

    [Fact]
    public void Plan_NeedsThatAlternate_OpenASecondCycle()
    {
        // Two readings with the cover off and one between them with it on: nothing but two cycles serves.
        var shop = new Shop();
        shop.Aspect("cover.place", "fitted", "off");
        shop.Mark("engine.first", "open", "read");
        shop.Mark("engine.second", "open", "read");
        shop.Mark("engine.third", "open", "read");
        shop.Part("cover", "cover");
        shop.Part("engine", "engine");
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off");
        shop.Operation("read_first", "engine", "first: open -> read");
        shop.Operation("read_second", "engine", "second: open -> read");
        shop.Operation("read_third", "engine", "third: open -> read");
        shop.Needs("read_first", "cover.place", "off").Needs("read_second", "cover.place", "fitted").Needs("read_third", "cover.place", "off")
            .Needs("read_second", "engine.first", "read").Needs("read_third", "engine.second", "read")
            .Do("read_first", "engine").Do("read_second", "engine").Do("read_third", "engine");

        Assert.Equal(
            ["remove_cover(cover)", "read_first(engine)", "fit_cover(cover)", "read_second(engine)", "remove_cover(cover)#2", "read_third(engine)", "fit_cover(cover)#2"],
            shop.Plan().Ids());
    }

    [Fact]
    public void Plan_UndoingThatReturnsToTheStateFound_FindsWhatItsStepFound()
    {
        var shop = new Shop();
        shop.Aspect("pan.place", "fitted", "lowered", "off");
        shop.Mark("pan.unit", "old", "new");
        shop.Part("pan", "pan");
        shop.Pair("lower_pan", "lift_pan", "pan", "place: fitted -> lowered").Pair("take_pan", "offer_pan", "pan", "place: lowered | fitted -> off");
        shop.Operation("renew_pan", "pan", "unit: old -> new", phase: Phase.Work);
        shop.Mark("pan.seen", "no", "yes");
        shop.Operation("look_in", "pan", "seen: no -> yes");
        shop.Needs("look_in", "pan.place", "lowered").Do("look_in", "pan").Needs("renew_pan", "pan.place", "off").Needs("take_pan", "pan.seen", "yes").End("pan", "unit", "new");

        Assert.Equal(["lower_pan(pan)", "look_in(pan)", "take_pan(pan)", "renew_pan(pan)", "offer_pan(pan)", "lift_pan(pan)"], shop.Plan().Ids());
    }

    [Fact]
    public void Plan_JobThatEndsWithAPartOff_LeavesItOff()
    {
        var shop = new Shop();
        shop.Aspect("cover.place", "fitted", "off");
        shop.Part("cover", "cover");
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off").End("cover", "place", "off");

        Assert.Equal(["remove_cover(cover)"], shop.Plan().Ids());
    }

    [Fact]
    public void Plan_WaypointsInOrder_ArePassedInOrder()
    {
        var shop = new Shop();
        shop.Aspect("circuit.charge", "charged", "recovered", "evacuated");
        shop.Part("circuit", "circuit");
        shop.Operation("recover", "circuit", "charge: charged -> recovered");
        shop.Operation("evacuate", "circuit", "charge: recovered -> evacuated", phase: Phase.Work);
        shop.Operation("charge", "circuit", "charge: evacuated -> charged", phase: Phase.Back);
        shop.Do("recover", "circuit").Do("evacuate", "circuit").Do("charge", "circuit").Pass("circuit", "charge", "recovered", "evacuated", "charged");

        Assert.Equal(["recover(circuit)", "evacuate(circuit)", "charge(circuit)"], shop.Plan().Ids());
    }

    [Fact]
    public void Plan_OrderWithAMoment_BindsOnlyAtThatMoment()
    {
        var shop = Shops.Starter();
        shop.Mark("vehicle.wash", "no", "yes");
        shop.Operation("wash", "vehicle", "wash: no -> yes", phase: Phase.Work);
        shop.Do("wash", "vehicle").Order("wash", "remove_starter", at: ("vehicle.height", "ground"));

        // It would bind with the vehicle on the ground; the starter comes off when it is raised, so work waits for its phase.
        shop.Plan().Follows("remove_starter(starter)", "wash(vehicle)");
        var bound = Shops.Starter();
        bound.Mark("vehicle.wash", "no", "yes");
        bound.Operation("wash", "vehicle", "wash: no -> yes", phase: Phase.Work);
        bound.Do("wash", "vehicle").Order("wash", "remove_starter", at: ("vehicle.height", "raised"));
        bound.Plan().Follows("wash(vehicle)", "remove_starter(starter)");
    }

    [Fact]
    public void Plan_RingOfOrders_IsAnErrorThatNamesTheRules()
    {
        var result = Shops.Mounts().Order("free_mount", "remove_pan").Order("remove_pan", "free_mount").Try();

        Assert.Null(result.Plan);
        var diagnostic = Assert.Single(result.Diagnostics);
        Assert.Equal("PR0701", diagnostic.Code);
        Assert.Contains(diagnostic.Notes, note => note.Text.Contains("free_mount before remove_pan", StringComparison.Ordinal));
        Assert.Contains(diagnostic.Notes, note => note.Text.Contains("remove_pan before free_mount", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_RingOfOrdersThatCannotHoldTogether_IsFine()
    {
        var shop = Shops.Starter();
        shop.Mark("vehicle.wash", "no", "yes");
        shop.Operation("wash", "vehicle", "wash: no -> yes", phase: Phase.Work);
        shop.Do("wash", "vehicle")
            .Order("wash", "remove_starter", at: ("vehicle.height", "raised"))
            .Order("remove_starter", "wash", at: ("vehicle.height", "ground"));

        Assert.NotNull(shop.Try().Plan);
    }

    [Fact]
    public void Plan_NeedsThatExcludeEachOther_AreNamed()
    {
        var shop = Shops.Starter();
        shop.Needs("remove_starter", "battery.ground", "connected");

        var diagnostic = Assert.Single(shop.Try().Diagnostics);

        Assert.Equal("PR0702", diagnostic.Code);
        Assert.Contains("remove_starter(starter)", diagnostic.Message, StringComparison.Ordinal);
        Assert.Contains(diagnostic.Notes, note => note.Text.Contains("remove_starter needs battery.ground", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_StateOnArrival_IsBroughtBack()
    {
        var shop = Shops.Starter().Arrives("battery", "ground", "off");

        var plan = shop.Plan();

        Assert.DoesNotContain("disconnect_ground(battery)", plan.Ids());
        plan.Follows("fit_starter(starter)", "connect_ground(battery)");
    }

    [Fact]
    public void Plan_StepBefore_IsARealOne()
    {
        var plan = Shops.Starter().Plan();

        Assert.Equal(["raise_vehicle(vehicle)", "disconnect_ground(battery)"], plan.Step("remove_starter(starter)").After.OrderByDescending(id => id, StringComparer.Ordinal));
        Assert.Empty(plan.Step("disconnect_ground(battery)").After);
        Assert.Contains("fit_starter(starter)", plan.Step("connect_ground(battery)").After);
    }

    [Fact]
    public void Plan_StepThatOnlyAStepOfTheWayBackNeeds_WaitsForItsTurn()
    {
        // A holder that only the fitting needs, and that has to be gone again before the engine runs.
        var shop = Shops.Starter();
        shop.Aspect("holder.place", "away", "set");
        shop.Part("holder", "holder");
        shop.Mark("vehicle.proof", "open", "proven");
        shop.Operation("run_engine", "vehicle", "proof: open -> proven", phase: Phase.Prove);
        shop.Needs("run_engine", "holder.place", "away").Do("run_engine", "vehicle");
        shop.Pair("a_set_holder", "take_holder", "holder", "place: away -> set").Needs("fit_starter", "holder.place", "set");

        shop.Plan().Follows("renew_starter(starter)", "a_set_holder(holder)", "fit_starter(starter)", "take_holder(holder)", "connect_ground(battery)", "run_engine(vehicle)");
    }
}
