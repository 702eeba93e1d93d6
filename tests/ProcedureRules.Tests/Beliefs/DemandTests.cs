using ProcedureRules.Facts;
using ProcedureRules.Logic;
using Xunit;
using static ProcedureRules.Tests.Beliefs.World;

namespace ProcedureRules.Tests.Beliefs;

public class DemandTests
{
    private readonly World _world = new();

    [Fact]
    public void Demand_AndAMeasurement_StandBesideEachOther()
    {
        var rise = _world.Gap("rise");
        _world.Observe(rise, Millimetres(1), Source.Measured);
        _world.Rule([], [], AtLeast(rise, Say.Millimetres(4)));
        var beliefs = _world.Believe();
        Assert.Equal(Millimetres(1), beliefs.Fact(rise.Part, rise.Fact));
        Assert.Equal(Millimetres(4).Quantity, beliefs.Demanded(rise.Part, rise.Fact));
    }

    [Fact]
    public void Demands_All_Count()
    {
        var rise = _world.Gap("rise");
        _world.Rule([], [], AtLeast(rise, Say.Millimetres(4)));
        _world.Rule([], [], AtLeast(rise, Say.Millimetres(6)));
        _world.Rule([], [], AtMost(rise, Say.Millimetres(9)));
        var beliefs = _world.Believe();
        Assert.Equal(Millimetres(6).Quantity, beliefs.Demanded(rise.Part, rise.Fact));
        Assert.Equal(Millimetres(9).Quantity, beliefs.Demands(rise).Most);
        Assert.Equal(Millimetres(9).Quantity, beliefs.Allowed(rise.Part, rise.Fact));
        Assert.Empty(beliefs.EmptyBands);
    }

    [Fact]
    public void Demand_OfNothing_IsTheLeastThatCanOccur()
    {
        var rise = _world.Gap("rise");
        var beliefs = _world.Believe();
        Assert.Equal(Millimetres(0).Quantity, beliefs.Demanded(rise.Part, rise.Fact));
        Assert.Null(beliefs.Demands(rise).Least);
    }

    [Fact]
    public void Demand_ThatIsPossible_RaisesTheUpperEndOnly()
    {
        var (wet, rise) = (_world.YesNo("wet"), _world.Gap("rise"));
        _world.Rule([], [], AtLeast(rise, Say.Millimetres(2, 3)));
        _world.Rule([], [Say.Yes(wet)], AtLeast(rise, Say.Millimetres(6)));
        Assert.Equal(Millimetres(2, 6).Quantity, _world.Believe().Demanded(rise.Part, rise.Fact));
    }

    [Fact]
    public void Demands_ThatNothingSatisfies_AreReported()
    {
        var rise = _world.Gap("rise");
        var least = _world.Rule([], [], AtLeast(rise, Say.Millimetres(4)));
        var most = _world.Rule([], [], AtMost(rise, Say.Millimetres(3)));
        var empty = Assert.Single(_world.Believe().EmptyBands);
        Assert.Equal(rise, empty.Key);
        Assert.Equal([least, most], empty.Demands.Select(demand => demand.Record));
    }

    [Fact]
    public void Demand_OfAtMostThatIsPossible_LowersTheLowerEndOfWhatIsAllowed()
    {
        var (wet, rise) = (_world.YesNo("wet"), _world.Gap("rise"));
        _world.Rule([], [], AtMost(rise, Say.Millimetres(7, 8)));
        _world.Rule([], [Say.Yes(wet)], AtMost(rise, Say.Millimetres(2)));
        Assert.Equal(Millimetres(2, 8).Quantity, _world.Believe().Allowed(rise.Part, rise.Fact));
    }

    [Fact]
    public void Demands_ThatMayBeSatisfied_AreNotReported()
    {
        var (wet, rise) = (_world.YesNo("wet"), _world.Gap("rise"));
        _world.Rule([], [Say.Yes(wet)], AtLeast(rise, Say.Millimetres(4)));
        _world.Rule([], [], AtMost(rise, Say.Millimetres(3)));
        Assert.Empty(_world.Believe().EmptyBands);
    }

    [Fact]
    public void Test_OnADemand_ReadsWhatIsSurelyDemanded()
    {
        var (rise, step) = (_world.Gap("rise"), _world.Does("block"));
        _world.Rule([], [], AtLeast(rise, Say.Millimetres(4)));
        _world.Rule([], [Say.Not(Say.DemandedLess(rise, 3))], Conclude(step));
        Assert.Equal(Truth.Yes, _world.Believe().TruthOf(step));
    }
}
