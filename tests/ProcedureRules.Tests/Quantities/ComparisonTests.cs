using FsCheck.Xunit;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Quantities;

[Properties(Arbitrary = [typeof(Sample)], MaxTest = 500)]
public class ComparisonTests
{
    [Theory]
    [InlineData("1 in", "2 in", Truth.Yes, Truth.Yes, Truth.No)]
    [InlineData("2 in", "1 in", Truth.No, Truth.No, Truth.No)]
    [InlineData("1 in", "25.4 mm", Truth.No, Truth.Yes, Truth.Yes)]
    [InlineData("1..2 in", "2..3 in", Truth.Unknown, Truth.Yes, Truth.Unknown)]
    [InlineData("1..2 in", "1.5 in", Truth.Unknown, Truth.Unknown, Truth.Unknown)]
    [InlineData("2..3 in", "1..2 in", Truth.No, Truth.Unknown, Truth.Unknown)]
    [InlineData("1..2 in", "1..2 in", Truth.Unknown, Truth.Unknown, Truth.Unknown)]
    [InlineData("3..inf in", "2 in", Truth.No, Truth.No, Truth.No)]
    [InlineData("29 inHg vac", "0 psi", Truth.Yes, Truth.Yes, Truth.No)]
    [InlineData("32 degF", "0 degC", Truth.No, Truth.Yes, Truth.Yes)]
    public void Comparisons_OfIntervals_AreUnknownWhereTheyOverlap(string left, string right, Truth less, Truth lessOrEqual, Truth equal)
    {
        var (a, b) = (Quantity.Read(left), Quantity.Read(right));
        Assert.Equal(less, Quantity.LessThan(a, b));
        Assert.Equal(lessOrEqual, Quantity.LessOrEqual(a, b));
        Assert.Equal(equal, Quantity.EqualTo(a, b));
        Assert.Equal(less, Quantity.GreaterThan(b, a));
        Assert.Equal(lessOrEqual, Quantity.GreaterOrEqual(b, a));
    }

    [Theory]
    [InlineData(20, 30)]
    [InlineData(10, 20)]
    [InlineData(7, 21)]
    [InlineData(1, 2)]
    public void Comparisons_OfASumWithItsFigure_AreNotBlurredByRounding(int a, int b)
    {
        var sum = Quantity.Of(a / 1000.0, "in") + Quantity.Of(b, "thou");
        var figure = Quantity.Read($"{a + b} thou");
        Assert.Equal(Truth.Yes, Quantity.EqualTo(sum, figure));
        Assert.Equal(Truth.No, Quantity.LessThan(sum, figure));
        Assert.Equal(Truth.Yes, Quantity.GreaterOrEqual(sum - figure, Quantity.Read("0 in")));
        Assert.Equal(Truth.No, Quantity.EqualTo(sum, Quantity.Read($"{a + b}.000001 thou")));
    }

    [Property]
    public bool Comparisons_WhenAnIntervalNarrows_KeepWhatWasKnown((Quantity A, Quantity B) pair, byte i, byte j)
    {
        var (a, b) = pair;
        var inner = Quantity.Between(Sample.Inside(a, Math.Min(i, j)), Sample.Inside(a, Math.Max(i, j)), Dimension.Length);
        return !a.Contains(inner) || (Keeps(Quantity.LessThan) && Keeps(Quantity.LessOrEqual) && Keeps(Quantity.EqualTo)
            && Keeps(Quantity.GreaterThan) && Keeps(Quantity.GreaterOrEqual));

        bool Keeps(Func<Quantity, Quantity, Truth> compare) =>
            compare(a, b) is var before && (before == Truth.Unknown || before == compare(inner, b));
    }

    [Property]
    public bool Comparisons_OfAnyTwo_AgreeWithEachOther((Quantity A, Quantity B) pair)
    {
        var (a, b) = pair;
        return Quantity.LessThan(a, b) == Kleene.Not(Quantity.GreaterOrEqual(a, b))
            && Quantity.GreaterThan(a, b) == Kleene.Not(Quantity.LessOrEqual(a, b))
            && Quantity.EqualTo(a, b) == Quantity.EqualTo(b, a);
    }

    [Property]
    public bool LessThan_WhenSure_HoldsForValuesBetweenTheBounds((Quantity A, Quantity B) pair, byte i, byte j)
    {
        var (x, y) = (Sample.Inside(pair.A, i), Sample.Inside(pair.B, j));
        return Quantity.LessThan(pair.A, pair.B) switch
        {
            Truth.Yes => x < y,
            Truth.No => x >= y - (1e-12 + (1e-12 * Math.Max(Math.Abs(x), Math.Abs(y)))),
            _ => true,
        };
    }
}
