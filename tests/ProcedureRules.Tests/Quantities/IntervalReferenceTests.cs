using System.Globalization;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Quantities;

public class IntervalReferenceTests
{
    public static TheoryData<string> Cases => [.. IntervalCases.Text.Split('\n').Select(line => line.Trim())];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Arithmetic_CommunityCasesOfIeee1788_GiveTheTightestInterval(string line)
    {
        var cells = line.Split(';');
        var (left, right, expected) = (Interval(cells[1]), Interval(cells[2]), Interval(cells[3]));

        var actual = cells[0] switch
        {
            "add" => left + right,
            "sub" => left - right,
            "mul" => left * right,
            "div" => left / right,
            var other => throw new InvalidOperationException(other),
        };

        Assert.Equal(expected, actual);
    }

    [Fact]
    public void Cases_OfEveryOperation_AreMany() => Assert.All(
        Cases.Select(row => row.Data[..3]).CountBy(name => name),
        group => Assert.True(group.Value >= 16, $"only {group.Value} cases of {group.Key}"));

    private static Quantity Interval(string cell)
    {
        var ends = cell.Trim().Split(' ').Select(Bound).ToArray();
        return Quantity.Between(ends[0], ends[1], Dimension.Number);
    }

    private static double Bound(string text) => text switch
    {
        "inf" => double.PositiveInfinity,
        "-inf" => double.NegativeInfinity,
        _ => double.Parse(text, CultureInfo.InvariantCulture),
    };
}
