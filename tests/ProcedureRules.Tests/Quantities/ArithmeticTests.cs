using FsCheck.Xunit;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Quantities;

[Properties(Arbitrary = [typeof(Sample)], MaxTest = 500)]
public class ArithmeticTests
{
    [Property]
    public bool Sum_OfValuesBetweenTheBounds_LiesBetweenItsBounds((Quantity A, Quantity B) pair, byte i, byte j)
    {
        var (x, y) = (Sample.Inside(pair.A, i), Sample.Inside(pair.B, j));
        return Holds(pair.A + pair.B, x + y) && Holds(pair.A - pair.B, x - y) && Holds(-pair.A, -x);
    }

    [Property]
    public bool Product_OfValuesBetweenTheBounds_LiesBetweenItsBounds((Quantity A, Quantity B) pair, byte i, byte j)
    {
        var (x, y) = (Sample.Inside(pair.A, i), Sample.Inside(pair.B, j));
        return Holds(pair.A * pair.B, x * y) && (y == 0 || Holds(pair.A / pair.B, x / y));
    }

    [Property]
    public bool LeastGreatestAbs_OfValuesBetweenTheBounds_LieBetweenTheirBounds((Quantity A, Quantity B) pair, byte i, byte j)
    {
        var (x, y) = (Sample.Inside(pair.A, i), Sample.Inside(pair.B, j));
        return Holds(Quantity.Min(pair.A, pair.B), Math.Min(x, y))
            && Holds(Quantity.Max(pair.A, pair.B), Math.Max(x, y))
            && Holds(Quantity.Abs(pair.A), Math.Abs(x));
    }

    [Property]
    public bool SumAndProduct_OfPoints_ContainTheExactResultWithinAnUlp((Quantity A, Quantity B) pair)
    {
        var (x, y) = (Sample.Inside(pair.A, 0), Sample.Inside(pair.B, 0));
        var (a, b) = (Quantity.Point(x, Dimension.Length), Quantity.Point(y, Dimension.Length));
        var (ex, ey) = (ExactNumber.From(x), ExactNumber.From(y));
        return IsTight(a + b, ex + ey) && IsTight(a - b, ex - ey) && IsTight(a * b, ex * ey) && (y == 0 || IsTight(a / b, ex / ey));
    }

    [Property]
    public bool HullAndIntersection_OfTwo_EncloseAndAreEnclosed((Quantity A, Quantity B) pair)
    {
        var hull = Quantity.Hull(pair.A, pair.B);
        var common = Quantity.Intersect(pair.A, pair.B);
        return hull.Contains(pair.A) && hull.Contains(pair.B)
            && (common is { } c ? hull.Contains(c) : pair.A.High < pair.B.Low || pair.B.High < pair.A.Low)
            && Quantity.Intersect(pair.A, pair.A) == pair.A;
    }

    [Fact]
    public void Intersect_OfBoundsThatRoundingParts_IsWhereTheyMeet()
    {
        var least = Quantity.Read("20 thou") + Quantity.Read("30 thou");
        var floor = Quantity.Between(least.High, double.PositiveInfinity, Dimension.Length);
        var ceiling = Quantity.Between(double.NegativeInfinity, Math.BitDecrement(least.Low), Dimension.Length);

        Assert.NotNull(Quantity.Intersect(floor, ceiling));
        Assert.Null(Quantity.Intersect(floor, Quantity.Read("-inf..49 thou")));
    }

    [Theory]
    [InlineData("2 in", "+", "3 mm", "53.8 mm")]
    [InlineData("2 in", "-", "0.5 in", "1.5 in")]
    [InlineData("80 degF", "-", "60 degF", "dT 20 degF")]
    [InlineData("60 degF", "+", "dT 20 degF", "80 degF")]
    [InlineData("45 psi", "-", "40 psi", "dP 5 psi")]
    [InlineData("10 lbf", "*", "1 ft", "10 lb.ft")]
    [InlineData("12 V", "*", "2 A", "24 W")]
    [InlineData("12 V", "/", "2 A", "6 ohm")]
    [InlineData("2 in", "*", "3 in", "6 sq in")]
    [InlineData("6 qt", "/", "2 qt", "3")]
    [InlineData("3 h", "*", "0.5", "90 min")]
    [InlineData("100 psi", "/", "125 psi", "80 %")]
    [InlineData("300 kg/m3", "*", "2 L", "0.6 kg")]
    public void Arithmetic_OfWorkshopFigures_GivesTheFigureExpected(string left, string operation, string right, string expected)
    {
        var (a, b) = (Quantity.Read(left), Quantity.Read(right));
        var result = operation switch { "+" => a + b, "-" => a - b, "*" => a * b, _ => a / b };
        Assert.Equal(Truth.Yes, Quantity.EqualTo(Quantity.Read(expected), result));
        Assert.Equal(Quantity.Read(expected).Dimension, result.Dimension);
    }

    [Fact]
    public void Divide_ByWhatMayBeZero_LeavesTheQuotientOpen()
    {
        var two = Quantity.Number(2);
        Assert.Equal(Quantity.Anything(Dimension.Number), two / Quantity.Number(0));
        Assert.Equal(Quantity.Anything(Dimension.Number), two / Quantity.Between(-1, 1, Dimension.Number));
        Assert.Equal(Quantity.Between(0.5, double.PositiveInfinity, Dimension.Number), two / Quantity.Between(0, 4, Dimension.Number));
    }

    [Fact]
    public void Operators_OfKindsThatDoNotMix_SaySo()
    {
        var error = Assert.Throws<InvalidOperationException>(() => Quantity.Read("45 psi") - Quantity.Read("14.7 psia"));
        Assert.Equal(
            "an absolute pressure cannot be taken from a gauge pressure: one counts from the air around, the other from empty space",
            error.Message);
        Assert.Throws<InvalidOperationException>(() => -Quantity.Read("20 degC"));
        Assert.Throws<InvalidOperationException>(() => Quantity.Hull(Quantity.Read("1 in"), Quantity.Read("1 kg")));
    }

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(2, 1)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity, double.NegativeInfinity)]
    public void Between_WhatIsNoInterval_IsRefused(double low, double high) =>
        Assert.Throws<ArgumentException>(() => Quantity.Between(low, high, Dimension.Length));

    private static bool Holds(Quantity result, double value) => result.Low <= value && value <= result.High;

    private static bool IsTight(Quantity result, ExactNumber exact)
    {
        var contains = (double.IsInfinity(result.Low) || !(exact < ExactNumber.From(result.Low)))
            && (double.IsInfinity(result.High) || !(exact > ExactNumber.From(result.High)));
        return contains && Math.BitIncrement(Math.BitIncrement(result.Low)) >= result.High;
    }
}
