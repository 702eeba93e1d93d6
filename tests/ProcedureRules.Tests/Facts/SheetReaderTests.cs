using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Facts;

public sealed class SheetReaderTests
{
    [Fact]
    public void Read_GoodSheet_NoComplaint()
    {
        Assert.Equal("", GivenSheets.Complaints(GivenSheets.Van));
    }

    [Fact]
    public void Read_GoodSheet_HoldsWhatItSays()
    {
        var van = GivenSheets.Read(GivenSheets.Van).Situation!;
        Assert.Equal(["vehicle", "starter", "oil_pan", "cover", "left_mount", "right_mount", "steering_link"], van.Parts.Select(part => part.Name));
        Assert.Equal("lower cover", van.Parts[3].Text);
        Assert.Equal(Quantity.Read("2 in"), van.Observations[0].Value.Quantity);
        Assert.Equal((Source.Measured, "seen from below"), (van.Observations[1].Source, van.Observations[1].Note));
        Assert.Equal(3UL, van.Observations[2].Value.Words);
        Assert.Equal(1, van.StateNow(van.Parts[0], GivenSheets.Vocabulary.AspectOf(van.Parts[0].Kind, "height")!));
    }

    [Fact]
    public void Read_SilenceThatMeansUnknown_IsFilledIn()
    {
        var van = GivenSheets.Read(GivenSheets.Van).Situation!;
        var link = van.PartStatements[^1];
        Assert.Equal(("steering_link", Truth.Unknown, Source.None), (link.Part.Name, link.Exists, link.Source));
        var traps = van.Relations[^1];
        Assert.Equal(("traps", "starter", "cover", Truth.Unknown, Source.None), (traps.Relation.Name, traps.A.Name, traps.B.Name, traps.Holds, traps.Source));
    }
}
