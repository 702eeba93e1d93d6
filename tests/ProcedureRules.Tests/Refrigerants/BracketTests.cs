using FsCheck.Xunit;
using ProcedureRules.Refrigerants;
using Xunit;

namespace ProcedureRules.Tests.Refrigerants;

public class BracketTests
{
    // Flat on one side and steep on the other: where false position alone would creep.
    [Property(MaxTest = 500)]
    public bool Zero_OfACrookedFunction_IsFound(ushort at, byte crook, bool falls)
    {
        var (root, power) = ((at + 1) / 65_537.0, 1 + (crook % 15));
        double Function(double x) => (falls ? -1 : 1) * (Math.Pow(x, power) - Math.Pow(root, power));
        var found = Bracket.Zero(Function, 0, 1, 1e-15);
        return found is >= 0 and <= 1 && Math.Abs(Function(found)) <= 1e-15;
    }

    [Theory]
    [InlineData(2, 3, 2)]
    [InlineData(-3, -2, -2)]
    [InlineData(0, 5, 0)]
    [InlineData(-5, 0, 0)]
    public void Zero_WhereTheEndsShowIt_IsTheNearerEnd(double a, double b, double expected) => Assert.Equal(expected, Bracket.Zero(x => x, a, b, 1e-15));

    [Fact]
    public void Zero_OfALine_TakesOneStep()
    {
        var calls = 0;
        var found = Bracket.Zero(x => { calls++; return (2 * x) - 1; }, 0, 4, 1e-12);
        Assert.Equal(0.5, found);
        Assert.Equal(3, calls);
    }
}
