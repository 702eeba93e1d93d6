using System.Globalization;
using FsCheck.Xunit;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Quantities;

[Properties(Arbitrary = [typeof(Sample)], MaxTest = 500)]
public class PrintingTests
{
    [Theory]
    [InlineData("0.020 in", "20 thou", "0.508 mm")]
    [InlineData("3/8 in", "0.375 in", "9.525 mm")]
    [InlineData("0.020..0.025 in", "20..25 thou", "0.508..0.635 mm")]
    [InlineData("5 ft 3 in", "63 in", "1600.2 mm")]
    [InlineData("15 ft", "15 ft", "4.572 m")]
    [InlineData("20..45 min", "20..45 min", "20..45 min")]
    [InlineData("20 min..3 h", "20 min..3 h", "20 min..3 h")]
    [InlineData("90 s", "90 s", "90 s")]
    [InlineData("8 h", "8 h", "8 h")]
    [InlineData("2 lb 14 oz", "2.875 lb", "1.30407806375 kg")]
    [InlineData("12 oz", "12 oz", "340.1942775 g")]
    [InlineData("8 lb.in", "8 lb.in", "0.9038786322209336 N.m")]
    [InlineData("45 psi", "45 psi", "310.26407819257624 kPa")]
    [InlineData("200 kPa", "29.007547546041843 psi", "200 kPa")]
    [InlineData("20..29 inHg vac", "20..29 inHg vac", "-98.205281..-67.72778 kPa")]
    [InlineData("500 micron", "500 micron", "500 micron")]
    [InlineData("0 in", "0 in", "0 mm")]
    [InlineData("dP 200 micron", "dP 200 micron", "dP 200 micron")]
    [InlineData("dP 5 psi", "dP 5 psi", "dP 34.473786465841804 kPa")]
    [InlineData("-40 degF", "-40 degF", "-40 degC")]
    [InlineData("dT 18 degF", "dT 18 degF", "dT 10 degC")]
    [InlineData("5 qt", "5 qt", "4.73176473 L")]
    [InlineData("750 rpm", "750 rpm", "750 rpm")]
    [InlineData("3..inf in", "3..inf in", "76.2..inf mm")]
    [InlineData("75 %", "0.75", "0.75")]
    public void ToString_OfAQuantity_IsTheShortestThatReadsBack(string text, string us, string si)
    {
        var value = Quantity.Read(text);
        Assert.Equal(us, value.ToString(UnitSystem.Us));
        Assert.Equal(si, value.ToString(UnitSystem.Si));
    }

    [Theory]
    [InlineData("35 lb.ft", "35 lb.ft", "47.45 N.m")]
    [InlineData("0.020..0.025 in", "20..25 thou", "0.508..0.635 mm")]
    [InlineData("45..50 psi", "45..50 psi", "310.2..344.8 kPa")]
    [InlineData("80 degF", "80 degF", "26.67 degC")]
    [InlineData("3..inf in", "at least 3 in", "at least 76.2 mm")]
    [InlineData("-inf..3 in", "at most 3 in", "at most 76.2 mm")]
    [InlineData("20..inf inHg vac", "at least 20 inHg vac", "at most -67.72 kPa")]
    [InlineData("123456 mi", "123456 mi", "198683 km")]
    [InlineData("0..60 s", "0..1 min", "0..1 min")]
    [InlineData("45..150 min", "45 min..2 h 30 min", "45 min..2 h 30 min")]
    [InlineData("60 min..12 h", "1..12 h", "1..12 h")]
    [InlineData("4.6..12.09 h", "4 h 36 min..12 h 6 min", "4 h 36 min..12 h 6 min")]
    [InlineData("90 min", "90 min", "90 min")]
    [InlineData("100..30000 micron", "100..30000 micron", "100..30000 micron")]
    [InlineData("14.7 psia", "14.7 psia", "101.4 kPa abs")]
    [InlineData("0 thou", "0 in", "0 mm")]
    [InlineData("0 h", "0 min", "0 min")]
    [InlineData("10..30 s", "10..30 s", "10..30 s")]
    public void ToDisplay_OfAQuantity_HasFourFiguresRoundedOutward(string text, string us, string si)
    {
        var value = Quantity.Read(text);
        Assert.Equal(us, value.ToDisplay(UnitSystem.Us));
        Assert.Equal(si, value.ToDisplay(UnitSystem.Si));
    }

    [Theory]
    [InlineData("0.9195..1.061 in", "0.91..1.07 in")]
    [InlineData("-1.061..11.09 in", "-2..12 in")]
    [InlineData("0.6043..0.7385 in", "0.6..0.74 in")]
    [InlineData("11.98..12.02 V", "11.98..12.02 V")]
    [InlineData("1450..1974 lb", "1450..1974 lb")]
    [InlineData("418.94 lb", "418.9 lb")]
    [InlineData("26.24..54.04 lb.ft", "26.24..54.04 lb.ft")]
    [InlineData("0.5..inf in", "at least 0.5 in")]
    public void ToDisplayWorkedOut_OfARange_LeavesTheFiguresThatItsWidthDrowns(string text, string us) =>
        Assert.Equal(us, Quantity.Read(text).ToDisplayWorkedOut(UnitSystem.Us));

    [Fact]
    public void ToDisplay_OfASumOfFigures_ShowsNoRoundingDust()
    {
        var sum = Quantity.Read("0.1 in") + Quantity.Read("0.2 in") + Quantity.Read("0.7 in");
        Assert.Equal("1 in", sum.ToDisplay(UnitSystem.Us));
        Assert.Equal("1..1.2 in", (sum + Quantity.Read("0..0.2 in")).ToDisplay(UnitSystem.Us));
        Assert.Equal("any gauge pressure", Quantity.Anything(Dimension.GaugePressure).ToDisplay(UnitSystem.Us));
    }

    [Property]
    public bool TryRead_OfWhatToStringWrote_GivesTheSameQuantity(Quantity value, bool us)
    {
        var text = value.ToString(us ? UnitSystem.Us : UnitSystem.Si);
        return Quantity.TryRead(text, value.Dimension, out var back, out _) && back == value;
    }

    [Property]
    public bool TryRead_OfWhatToDisplayWrote_EnclosesARange(Quantity value, bool us)
    {
        if (!value.IsBounded || Quantity.EqualTo(value, value) == Truth.Yes) return true;
        var read = Quantity.TryRead(value.ToDisplay(us ? UnitSystem.Us : UnitSystem.Si), value.Dimension, out var shown, out _);

        // Figures beyond the twelfth are dust and may be dropped.
        var dust = 1e-11 * Math.Max(Math.Abs(value.Low), Math.Abs(value.High));
        return (read && shown.Low - dust <= value.Low && value.High <= shown.High + dust) || value.High > 1e300 || value.Low < -1e300;
    }

    [Fact]
    public void ToString_UnderAnotherCulture_KeepsThePoint()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CommaCulture();
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            var value = Quantity.Read("-1.5..2.25 in");
            Assert.Equal("-1.5..2.25 in", value.ToString(UnitSystem.Us));
            Assert.Equal("-38.1..57.15 mm", value.ToDisplay(UnitSystem.Si));
            Assert.Equal(value, Quantity.Read(value.ToString()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // Made by hand, because the build carries no culture data.
    private static CultureInfo CommaCulture()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "~";
        return culture;
    }
}
