using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Scenarios;

/// <summary>The engine is raised: what moves, what fouls, what it buys to take something away, and what is tried before.</summary>
/// <remarks>
/// The geometry is plane motion of a rigid body: lifted by 1.5 in at 30 in from the gearbox mount, which stays tight, the engine turns by
/// arcsin(1.5 / 30) = 2.866 deg. Where the margin lies is common practice, no source.
/// </remarks>
public class RaisingTests
{
    private const string Order = "oil-pan";
    private const string Raise = "raise_engine(engine)";

    [Theory]
    [InlineData("Heater hose: 2 in of room, moves 0.91..1.07 in")] // 2 x 19.8 in x sin(2.866 deg / 2) = 0.990 in, places good to an inch
    [InlineData("Gap between engine and firewall: 3 in of room, moves 0.76..0.87 in")] // 16 in x sin + 10 in x (1 - cos) = 0.813 in
    [InlineData("leaves 2.13..2.24 in")]
    public void Raising_WithEverythingMeasured_ShowsMovementGapAndVerdictOfEachPoint(string words) =>
        Assert.Contains(StepOf(Raise, "heater_hose.gap=2 in").Checks, check => check is { During: true, Verdict: Truth.Yes } && check.Text.ToString().Contains(words, StringComparison.Ordinal));

    [Fact]
    public void Raising_NamesThePointThatBindsFirstAndWhatItsRemovalBuys()
    {
        var detail = Detail(StepOf(Raise, "heater_hose.gap=2 in"));
        Assert.Contains("With everything fitted it could rise 0.552..0.575 in before something fouls; first the gap between fan tips and shroud.", detail, StringComparison.Ordinal);
        Assert.Contains("With the fan out of the way: 2.57..2.9 in", detail, StringComparison.Ordinal);
        Assert.DoesNotContain("With the ground strap", detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Raising_WhereAHoseWasNotMeasured_WatchesItAndAsks()
    {
        var plan = Shipped.Plan(Order);
        Assert.Contains(plan.Questions, question => question.Id == "heater_hose.gap");
        Assert.Contains(Step(plan, Raise).Checks, check => check.During && check.Text.ToString().StartsWith("Heater hose: (gap: ask)", StringComparison.Ordinal));
    }

    [Fact]
    public void Raising_WhereAHoseWasNotMeasured_LeavesOutWhatWouldSayNothing() =>
        Assert.DoesNotContain("With the fan out of the way", Detail(StepOf(Raise)), StringComparison.Ordinal);

    [Theory]
    [InlineData("heater_hose.gap=-1 in", "PR0505")] // a gap below nothing
    [InlineData("rear_axle.behind=0 in", "PR0505")] // no wheelbase
    [InlineData("heater_hose.gap=5 psi", "PR0504")] // a pressure for a gap
    [InlineData("front_axle.load=830", "PR0504")] // no unit
    public void Statement_OfWhatCannotBe_IsAskedBackAndCrashesNothing(string statement, string code)
    {
        var session = Shipped.Open(Order);
        Assert.Contains(session.State(statement), mistake => mistake.Code == code);
        Assert.NotEmpty(Shipped.PlanOf(session).Steps);
    }

    [Theory]
    [InlineData("throttle_linkage.gap=1 in", "free_slack_point(throttle_linkage)")]
    [InlineData("exhaust_slack.gap=1/2 in", "remove_exhaust(exhaust)")]
    public void Raising_WhereAGapIsTooSmall_TakesAwayWhatEasesIt(string statement, string step)
    {
        Assert.DoesNotContain(Shipped.Plan(Order, "heater_hose.gap=2 in").Steps, other => other.Id == step);
        Assert.True(Step(Shipped.Plan(Order, "heater_hose.gap=2 in", statement), step).Number < StepOf(Raise, statement).Number);
    }

    [Fact]
    public void Raising_LiftedStraight_MovesEveryPointByTheRise()
    {
        var checks = StepOf(Raise, "heater_hose.gap=2 in", "engine.raised_how=straight").Checks;
        Assert.Contains(checks, check => check.Verdict == Truth.Yes && check.Text.ToString() == "Heater hose: 2 in of room, moves 1.5 in, leaves 0.5 in");
    }

    [Fact]
    public void Raising_PastAFixedGap_StopsAndNamesIt()
    {
        var plan = Shipped.Plan(Order, "firewall_gap.gap=0.5 in");
        var stop = Assert.Single(plan.Stops);
        Assert.Contains("at least 1.5 in, at most 0.7657..0.8675 in", stop.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains("gap between engine and firewall", stop.Reason.Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Raising_LiftedAndTilted_MovesEveryPointByAnythingUpToBoth()
    {
        var checks = StepOf(Raise, "heater_hose.gap=2 in", "engine.raised_how=both").Checks;
        Assert.Contains(checks, check => check.Text.ToString().StartsWith("Ground strap between engine and body: 4 in of room, moves 0..2.2 in", StringComparison.Ordinal));
    }

    [Fact]
    public void Raising_NearerToTheMountLeftTight_NeedsMoreAtTheLiftingPoint() =>
        // The pan needs 1.5 in more where it is half as far out as the lifting point: 3 in there.
        Assert.Contains("by 3 in", StepOf(Raise, "oil_pan.meets_at=15 in").Text.ToString(), StringComparison.Ordinal);

    [Fact]
    public void Raising_WhereFreeingThePumpIsEnough_IsNotDone()
    {
        var plan = Shipped.Plan(Order, "oil_pan.drop_pump_free=1.5 in");
        Assert.DoesNotContain(plan.Steps, step => step.Id == Raise);
        Assert.Contains(plan.Steps, step => step.Id == "drop_pickup(oil_pickup)");
    }

    [Fact]
    public void Raising_WithoutAPickup_IsStillNeeded() =>
        Assert.Contains(Shipped.Plan(Order, "part oil_pickup=no").Steps, step => step.Id == Raise);

    [Fact]
    public void Raising_ForADeeperNewPan_GoesHigherAndIsCheckedAgain()
    {
        var plan = Shipped.Plan(Order, "oil_pan.deeper=1 in", "oil_pan.room_below=1 in");
        Assert.Contains("by 2.5 in", Step(plan, Raise).Text.ToString(), StringComparison.Ordinal);
        Assert.Contains(Step(plan, "renew_pan(oil_pan)").Checks, check => check.Verdict == Truth.No);
    }

    [Fact]
    public void Raising_OnAssumedPlaces_NamesWhatIsAssumedAndNotWhatFollowsFromIt()
    {
        var assumed = Shipped.Plan(Order).Assumptions.Select(item => item.Text.ToString()).ToList();
        Assert.Contains("throttle linkage out: 16 in", assumed);
        Assert.DoesNotContain(assumed, text => text.Contains(" left: ", StringComparison.Ordinal) || text.Contains("safe rise", StringComparison.Ordinal) || text.Contains("linkage side", StringComparison.Ordinal));
    }

    [Fact]
    public void Jack_UnderTheEngineOfAWeighedVehicle_ShowsWhatTheFrontPadsStillCarry()
    {
        // Moments by hand: centre 640 x 108 / 1470 = 47.02 in; front pads 1470 x (86 - 47.02) / 64 = 895 kg = 1974 lb, less 190 x (86 - 6) / 64 = 237.5 kg.
        var step = StepOf("jack_under_boss(engine)");
        Assert.Contains(step.Checks, check => check.Text.ToString().StartsWith("Front pads carry 1450..1974 lb", StringComparison.Ordinal));
    }

    [Fact]
    public void Jack_WithAHeavyPartOffBesides_AddsUpBoth()
    {
        string[] subframe = ["part subframe=yes", "subframe.behind=4 in"];
        Assert.Equal([Truth.Yes], StepOf("jack_under_boss(engine)", [.. subframe, "subframe.mass=25 kg"]).Checks.Where(IsAboutHeavyParts).Select(check => check.Verdict));
        Assert.Equal([Truth.Unknown], StepOf("jack_under_boss(engine)", [.. subframe, "subframe.mass=500 kg", "engine.mass=400 kg"]).Checks.Where(IsAboutHeavyParts).Select(check => check.Verdict));

        static bool IsAboutHeavyParts(PlanCheck check) => check.Text.ToString().StartsWith("Whatever else heavy is off", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("engine.boss_state=cracked", "jack_under_bellhousing(engine)")]
    [InlineData("engine.bellhousing_state=thin", "jack_under_boss(engine)")]
    public void Jack_UnderAWeakPoint_IsSetUnderAnother(string statement, string step)
    {
        var plan = Shipped.Plan(Order, statement);
        Assert.Equal([step], plan.Steps.Select(other => other.Id).Where(id => id.StartsWith("jack_under", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("45 deg", Truth.No)]
    [InlineData("60 deg", Truth.Yes)]
    public void Hoist_WithAChainAtAnAngle_ShowsWhatEachLegCarries(string angle, Truth isSteepEnough)
    {
        // Statics of a sling: half the load over the sine of the angle from level. 60 degrees or steeper: common practice, no source.
        var step = StepOf(
            "hang_on_hoist(engine)",
            "vehicle.hoist_at_hand=yes", "engine.lifting_eyes=yes", "engine.jack_boss=no", "engine.bellhousing_flat=no",
            "vehicle.hoist_rating=500 kg", "vehicle.sling_legs=2", $"vehicle.sling_angle={angle}", "vehicle.sling_leg_rating=400 kg");
        var share = angle == "45 deg" ? "296.2 lb" : "241.8 lb";
        Assert.Contains(step.Checks, check => check.Text.ToString().Contains(share, StringComparison.Ordinal) && check.Verdict == Truth.Yes);
        Assert.Contains(step.Checks, check => check.Text.ToString().StartsWith("The legs stand 60 degrees", StringComparison.Ordinal) && check.Verdict == isSteepEnough);
    }

    [Theory]
    [InlineData("1000 kg", Truth.No)]
    [InlineData("2700 kg", Truth.Yes)]
    public void Stands_ByTheirRating_AreEnoughOrNot(string rating, Truth isEnough)
    {
        var raise = Step(Shipped.Plan("crank-pulley", $"vehicle.stand_rating={rating}"), "raise_on_stands(vehicle)");
        Assert.Contains(raise.Checks, check => check.Text.ToString().StartsWith("A pair of stands", StringComparison.Ordinal) && check.Verdict == isEnough);
    }

    [Fact]
    public void Jack_RatedForLessThanTheEngine_FailsItsCheck() =>
        Assert.Contains(StepOf("jack_under_boss(engine)", "vehicle.jack_rating=150 kg").Checks, check => check.Verdict == Truth.No);

    private static PlanStep StepOf(string id, params string[] statements) => Step(Shipped.Plan(Order, statements), id);

    private static PlanStep Step(Plan plan, string id) => plan.Steps.FirstOrDefault(step => step.Id == id)
        ?? throw new Xunit.Sdk.XunitException($"no step {id} in: {string.Join(", ", plan.Steps.Select(step => step.Id))}");

    private static string Detail(PlanStep step) => string.Join('\n', step.Detail);
}
