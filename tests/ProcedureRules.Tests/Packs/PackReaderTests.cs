using ProcedureRules.Packs;
using Xunit;

namespace ProcedureRules.Tests.Packs;

public sealed class PackReaderTests
{
    [Fact]
    public void Read_GoodPack_NoComplaint()
    {
        Assert.Equal("", GivenPacks.Complaints(GivenPacks.Base));
    }

    [Fact]
    public void Read_UndoingOperation_TakesOverWhatItLeavesOut()
    {
        var (packs, _) = GivenPacks.Read(GivenPacks.Base);
        var fit = packs.Vocabulary.Operations["fit_starter"];
        var remove = packs.Vocabulary.Operations["remove_starter"];
        Assert.Same(remove, fit.Undoes);
        Assert.Same(fit, remove.UndoneBy);
        Assert.Equal(("under", 2, Phase.Back), (fit.Place, fit.Hands, fit.Phase));
        Assert.Equal(Phase.Apart, remove.Phase);
        var change = Assert.Single(fit.Changes);
        Assert.Equal((StateSet.Of(1), 0), (change.From, change.To));
    }

    [Fact]
    public void Read_StepFromAnyState_UndoReturnsToStateFound()
    {
        var (packs, _) = GivenPacks.Read(GivenPacks.Base);
        Assert.Equal(0b111UL, packs.Vocabulary.Operations["remove_pan"].Changes[0].From.Bits);
        Assert.Equal(-1, packs.Vocabulary.Operations["fit_pan"].Changes[0].To);
    }

    [Fact]
    public void Read_NeedsAndMoves_KeepTheirWayAndIt()
    {
        var (packs, _) = GivenPacks.Read(GivenPacks.Base);
        var remove = packs.Vocabulary.Operations["remove_starter"];
        Assert.Equal([Way.Both, Way.Off], remove.Needs.Select(need => need.Way));
        Assert.True(remove.MovesIt);
        Assert.Equal("dust_cover", Assert.Single(remove.Moves).Name);
    }
}
