using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Mechanics;

/// <summary>What supports carry, against worked examples of physics courses.</summary>
public class BalanceTests
{
    // Problems of a car on its two axles as physics courses set them; loads per axle in newtons, with the g of the problem.
    // The third has an answer in print that swaps front and rear: the heavier axle is the one the centre of gravity is nearer to.
    [Theory]
    [InlineData(1360, 3.05, 1.78, 9.8, 2 * 2775, 2 * 3889)]
    [InlineData(961, 3.27, 0.615, 9.81, 2 * 3827.2, 2 * 886.5)] // answer in print, rounded: 3830 and 887 N a wheel
    [InlineData(1800, 1.80, 1.05, 9.8, 2 * 3675, 2 * 5145)] // answer in print, the same
    [InlineData(1530, 2.70, 1.15, 9.8, 8616, 6393)] // printed the wrong way round
    public void SupportLoads_OfWorkedExamples_AreTheirAnswers(double kilograms, double wheelbase, double behindFront, double gravity, double frontNewtons, double rearNewtons)
    {
        Quantity[] given = [Kilograms(kilograms), Metres(behindFront), Kilograms(0), Metres(0), Metres(0), Metres(wheelbase)];
        Assert.Equal(frontNewtons, Call.Of("front_support_load", given).In("kg") * gravity, 0.5 + (frontNewtons * 1e-3));
        Assert.Equal(rearNewtons, Call.Of("rear_support_load", given).In("kg") * gravity, 0.5 + (rearNewtons * 1e-3));
    }

    [Fact]
    public void CentreFromAxleLoads_OfAWorkedExample_IsItsAnswer() =>
        // Physics course: front 5800 N, rear 6500 N, wheelbase 3.20 m: 1.69 m behind the front axle.
        Assert.Equal(1.691, Call.Of("centre_from_axle_loads", Kilograms(5800 / 9.8), Kilograms(6500 / 9.8), Metres(3.20)).In("m"), 3);

    [Fact]
    public void CentreHeight_OfATiltedVehicle_IsTheHeightThatTiltsItSo()
    {
        // The tilt method of a vehicle dynamics text, h = r + (b - L Rf1 / W) cot t with sin t = H / L: here turned round, from a known height to the load.
        const double mass = 1500, wheelbase = 2.7, ahead = 1.5, height = 0.55, radius = 0.3, raised = 0.6;
        var sine = raised / wheelbase;
        var front = mass / wheelbase * (ahead - ((height - radius) * sine / Math.Sqrt(1 - (sine * sine))));
        var found = Call.Of("centre_height", Kilograms(mass * ahead / wheelbase), Kilograms(front), Kilograms(mass), Metres(wheelbase), Metres(raised), Metres(radius));
        Assert.Equal(height, found.In("m"), 9);
    }

    [Fact]
    public void CentreWithout_OfAnEngineInFront_MovesBack()
    {
        // Moments by hand: (1400 x 1.2 - 200 x 0.1) / 1200 = 1.38333 m.
        Assert.Equal(1.38333, Call.Of("centre_without", "1400 kg", "1.2 m", "200 kg", "0.1 m").In("m"), 5);
    }

    [Fact]
    public void SupportLoads_WithAJackUnderTheEngine_CarryWhatIsLeft()
    {
        string[] given = ["1400 kg", "1.2 m", "200 kg", "0.1 m", "0.4 m", "2.1 m"];
        var (front, rear) = (Call.Of("front_support_load", given).In("kg"), Call.Of("rear_support_load", given).In("kg"));
        Assert.Equal(1200, front + rear, 9);
        Assert.Equal(((1400 * 0.9) - (200 * 2.0)) / 1.7, front, 9);
    }

    [Fact]
    public void PushToUnloadFront_AsTaken_LeavesTheFrontNothing()
    {
        var push = Call.Of("push_to_unload_front", "1400 kg", "1.2 m", "0.1 m", "2.1 m");
        var left = Call.Of("front_support_load", Kilograms(1400), Metres(1.2), Kilograms(push.In("kg")), Metres(0.1), Metres(0.4), Metres(2.1));
        Assert.Equal(0, left.In("kg"), 9);
    }

    [Fact]
    public void TippingReserve_OfACentreOutsideTheSupports_IsBelowNothing()
    {
        Assert.Equal(-0.1, Call.Of("tipping_reserve", "2.2 m", "0.4 m", "2.1 m").In("m"), 9);
        Assert.Equal(0.8, Call.Of("tipping_reserve", "1.2 m", "0.4 m", "2.1 m").In("m"), 9);
    }

    [Fact]
    public void TippingReserve_OfACentreAnywhereInTheMiddle_IsAtMostHalfTheSpan()
    {
        var reserve = Call.Of("tipping_reserve", "0.5..2 m", "0.4 m", "2.1 m");
        Assert.Equal(0.1, reserve.Low, 9);
        Assert.Equal(0.85, reserve.High, 9);
    }

    [Theory]
    [InlineData("60 deg", 115.4701)] // half the load over the sine of the angle: common statics of slings
    [InlineData("30 deg", 200)]
    [InlineData("90 deg", 100)]
    public void SlingLegLoad_OfTwoLegs_GrowsAsTheyFlatten(string angle, double kilograms) =>
        Assert.Equal(kilograms, Call.Of("sling_leg_load", "200 kg", "2", angle).In("kg"), 3);

    [Theory]
    [InlineData("centre_from_axle_loads", "700 kg", "600 kg", "0 m")] // no wheelbase
    [InlineData("centre_from_axle_loads", "0 kg", "0 kg", "2.7 m")] // no load
    [InlineData("centre_from_axle_loads", "-5 kg", "600 kg", "2.7 m")]
    [InlineData("centre_height", "700 kg", "690 kg", "1300 kg", "2.7 m", "0 m", "0.3 m")] // not tilted
    [InlineData("centre_height", "700 kg", "690 kg", "1300 kg", "2.7 m", "3 m", "0.3 m")] // raised by more than the wheelbase
    [InlineData("centre_without", "700 kg", "1.2 m", "700 kg", "0 m")] // all of it
    [InlineData("front_support_load", "700 kg", "1.2 m", "0 kg", "0 m", "2 m", "1 m")] // supports the wrong way round
    [InlineData("rear_support_load", "700 kg", "1.2 m", "800 kg", "0 m", "0 m", "1 m")] // more than there is
    [InlineData("tipping_reserve", "1.2 m", "1 m", "1 m")]
    [InlineData("push_to_unload_front", "700 kg", "1.2 m", "2.2 m", "2.1 m")] // behind the rear support
    [InlineData("sling_leg_load", "200 kg", "0", "60 deg")]
    [InlineData("sling_leg_load", "200 kg", "2", "0 deg")]
    public void Function_OfWhatCannotBe_IsAnything(string name, params string[] arguments)
    {
        var result = Call.Of(name, arguments);
        Assert.Equal(Quantity.Anything(result.Dimension), result);
    }

    private static Quantity Kilograms(double figure) => Quantity.Point(figure, Dimension.Mass);

    private static Quantity Metres(double figure) => Quantity.Point(figure, Dimension.Length);
}
