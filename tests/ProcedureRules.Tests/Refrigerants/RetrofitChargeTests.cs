using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Refrigerants;

/// <summary>The converted charge. Trade figures, no standard: common practice.</summary>
public class RetrofitChargeTests
{
    // 36 oz of R-12: 28.8 to 32.4 oz of R-134a, 816 to 919 g.
    [Fact]
    public void Charge_OfThirtySixOunces_IsTheBandOfTheWorkedExample()
    {
        var (low, high) = Call.Of("r12_to_r134a_charge", "36 oz").In(UnitTable.Find("oz")!);
        Assert.Equal(28.8, low, 1e-9);
        Assert.Equal(32.4, high, 1e-9);
        (low, high) = Call.Of("r12_to_r134a_charge", "2 lb 4 oz").In(UnitTable.Find("g")!);
        Assert.Equal(816, low, 0.5);
        Assert.Equal(919, high, 0.5);
    }

    // The other rule of the trade, nine tenths less a quarter of a pound, on 2.25 lb: 1.775 lb, 28.4 oz. It starts within half an ounce of the low end.
    [Fact]
    public void Start_OfTheWorkedExample_IsNearWhatTheSecondRuleGives() =>
        Assert.Equal(28.4, Call.Of("r12_to_r134a_start", "2.25 lb").In(UnitTable.Find("oz")!).High, 0.5);

    [Theory]
    [InlineData("r12_to_r134a_charge")]
    [InlineData("r12_to_r134a_start")]
    public void Charge_OfANegativeMass_IsUnknown(string function) => Assert.False(Call.Of(function, "-3 oz").IsBounded);
}
