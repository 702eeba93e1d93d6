using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Mechanics;

/// <summary>What an engine moves, and fouls, while it is raised.</summary>
public class RiseTests
{
    [Fact]
    public void MovesIntoGap_OfSlackTurning_IsTheChordOfItsArc()
    {
        // Arc = radius x angle in radians (any physics text): 24 in turned by 3 deg sweeps 1.257 in, and the straight way is 1.2565 in.
        Assert.Equal(1.2565, Call.Of("moves_into_gap", "any", "24 in", "0 in", "3 deg", "0 in").In("in"), 4);
        Assert.Equal(24 * 3 * Math.PI / 180, 1.257, 3);
    }

    [Fact]
    public void TurnOfRise_OfALeverOfTwice_IsThirtyDegrees() =>
        Assert.Equal(30, Call.Of("turn_of_rise", "15 in", "30 in").In("deg"), 9);

    // Plane rotation matrix: a point (x, z) turned by t goes to (x cos t - z sin t, x sin t + z cos t).
    [Theory]
    [InlineData("above", 40, 20, 5, 3.4101)] // 40 sin 5 - 20 (1 - cos 5)
    [InlineData("toward", 40, 20, 5, 1.8953)] // 20 sin 5 + 40 (1 - cos 5)
    [InlineData("away", 40, -20, 5, 1.5909)] // 20 sin 5 - 40 (1 - cos 5)
    [InlineData("below", -10, 0, 5, 0.8716)] // 10 sin 5: what lies behind the pivot goes down
    [InlineData("below", 40, 20, 5, 0)] // it only goes up
    [InlineData("away", 40, 20, 5, 0)] // it only comes back
    public void MovesIntoGap_OfATurn_IsTheRotationsComponent(string side, double across, double up, double degrees, double inches)
    {
        var moves = Call.Of("moves_into_gap", side, Inches(across), Inches(up), Quantity.Of(degrees, "deg"), Inches(0));
        Assert.Equal(inches, moves.In("in"), 3);
    }

    [Theory]
    [InlineData("above", 1.5)]
    [InlineData("any", 1.5)]
    [InlineData("below", 0)]
    [InlineData("away", 0)]
    [InlineData("toward", 0)]
    public void MovesIntoGap_LiftedStraight_IsTheLiftOrNothing(string side, double inches) =>
        Assert.Equal(inches, Call.Of("moves_into_gap", side, Inches(30), Inches(12), Quantity.Of(0, "deg"), Inches(1.5)).In("in"), 9);

    [Fact]
    public void MovesIntoGap_LiftedAndTurned_AddsUpAbove()
    {
        var both = Call.Of("moves_into_gap", "above", "30 in", "0 in", "3 deg", "1 in").In("in");
        Assert.Equal(1 + (30 * Math.Sin(3 * Math.PI / 180)), both, 9);
    }

    [Fact]
    public void MovesIntoGap_OfAPointThatSwingsBack_KeepsTheFurthestItCame()
    {
        // Straight over the pivot a point is as high as it gets: 5 in above and 5 in out it climbs to 7.071 in, then sinks.
        var (peak, later) = (Call.Of("moves_into_gap", "above", "5 in", "5 in", "45 deg", "0 in"), Call.Of("moves_into_gap", "above", "5 in", "5 in", "80 deg", "0 in"));
        Assert.Equal(Math.Sqrt(50) - 5, peak.In("in"), 9);
        Assert.Equal(peak.In("in"), later.In("in"), 9);
    }

    [Theory]
    [InlineData("above", "40 in", "20 in")]
    [InlineData("toward", "20 in", "25 in")]
    [InlineData("away", "30 in", "-25 in")]
    [InlineData("below", "-12 in", "3 in")]
    [InlineData("below", "-12 in", "-30 in")]
    [InlineData("any", "25 in", "18 in")]
    public void SafeRise_OfWhatAPointMoves_IsTheRiseThatMovedIt(string side, string across, string up)
    {
        var turn = Call.Of("turn_of_rise", "2 in", "32 in");
        var gap = Call.Of("moves_into_gap", side, Call.Read(across), Call.Read(up), turn, Inches(0));
        Assert.Equal(2, Call.Of("safe_rise", side, gap, Call.Read(across), Call.Read(up), Inches(32)).In("in"), 9);
    }

    [Theory]
    [InlineData("below", "0.5 in", "40 in", "10 in")]
    [InlineData("away", "0.5 in", "40 in", "10 in")]
    [InlineData("above", "30 in", "5 in", "5 in")]
    public void SafeRise_OfAGapThatNeverCloses_IsTheWholeArm(string side, string gap, string across, string up) =>
        Assert.Equal(32, Call.Of("safe_rise", side, gap, across, up, "32 in").In("in"), 9);

    [Fact]
    public void SafeRise_OfNoGap_IsNone() => Assert.Equal(0, Call.Of("safe_rise", "above", "0 in", "40 in", "20 in", "32 in").In("in"));

    [Fact]
    public void MovesIntoGap_OfPlacesReadWithATape_IsARange()
    {
        var moves = Call.Of("moves_into_gap", "above", "39..41 in", "19..21 in", "4.9..5.1 deg", "0 in");
        var (low, high) = moves.In(UnitTable.Find("in")!);
        Assert.InRange(low, 3.2, 3.3);
        Assert.InRange(high, 3.5, 3.6);
    }

    [Theory]
    [InlineData("safe_rise", "above", "-1 in", "40 in", "20 in", "32 in")] // a gap below nothing
    [InlineData("safe_rise", "above", "1 in", "40 in", "20 in", "0 in")] // no arm
    [InlineData("moves_into_gap", "above", "40 in", "20 in", "-5 deg", "0 in")] // turned the other way
    [InlineData("moves_into_gap", "above", "40 in", "20 in", "120 deg", "0 in")] // past upright
    [InlineData("moves_into_gap", "any", "40 in", "20 in", "5 deg", "-1 in")] // let down
    [InlineData("turn_of_rise", "-1 in", "32 in")]
    [InlineData("turn_of_rise", "1 in", "-32..32 in")]
    public void Function_OfWhatCannotBe_IsAnything(string name, params string[] arguments)
    {
        var result = Call.Of(name, arguments);
        Assert.Equal(Quantity.Anything(result.Dimension), result);
    }

    private static Quantity Inches(double figure) => Quantity.Of(figure, "in");
}
