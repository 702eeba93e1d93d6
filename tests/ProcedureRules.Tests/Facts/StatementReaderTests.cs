using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Facts;

public sealed class StatementReaderTests
{
    private static readonly Situation Van = GivenSheets.Read(GivenSheets.Van).Situation!;

    [Fact]
    public void Apply_FactOfTheSameSource_ReplacesWhatWasSaid()
    {
        var after = Apply("oil_pan.drop_available = 2.5 in");
        Assert.Equal(Quantity.Read("2.5 in"), Of(after, "oil_pan.drop_available").Single().Value.Quantity);
    }

    [Fact]
    public void Apply_FactOfAnotherSource_IsKeptBesideIt()
    {
        var after = Apply("oil_pan.drop_available=2.5 in", Source.Measured);
        Assert.Equal([Source.Stated, Source.Measured], Of(after, "oil_pan.drop_available").Select(observation => observation.Source));
    }

    [Fact]
    public void Apply_FactUnknown_TakesAllBack()
    {
        Assert.Empty(Of(Apply("oil_pan.drop_available=unknown"), "oil_pan.drop_available"));
    }

    [Fact]
    public void Apply_State_SetsItOrReturnsItToNormal()
    {
        Assert.Empty(Apply("vehicle.height=ground").States);
        Assert.Equal(2, Apply("oil_pan.place=off").States.Count);
    }

    [Theory]
    [InlineData("covers(cover, oil_pan)=no", Truth.No)]
    [InlineData("covers(cover, oil_pan)=unknown", Truth.Unknown)]
    [InlineData("not covers(cover, oil_pan)=yes", Truth.No)]
    [InlineData("not covers(cover, oil_pan)=no", Truth.Yes)]
    public void Apply_Relation_TheLastStatementCounts(string text, Truth holds)
    {
        var after = Apply(text).Relations.Single(relation => relation.Relation.Name == "covers" && relation.A.Name == "cover");
        Assert.Equal(holds, after.Holds);
    }

    [Fact]
    public void Apply_SilentPartSaidToBeThere_KeepsItsIdentity()
    {
        var after = Apply("part steering_link=yes");
        Assert.Equal((Truth.Yes, Source.Stated), after.PartStatements.Where(part => part.Part.Name == "steering_link").Select(part => (part.Exists, part.Source)).Single());
        Assert.Same(Van.Parts.Single(part => part.Name == "steering_link"), after.Parts.Single(part => part.Name == "steering_link"));
    }

    [Fact]
    public void Apply_PartSaidToBeAbsent_TakesWhatIsSaidOfItAway()
    {
        var after = Apply("part oil_pan=no");
        Assert.Empty(Of(after, "oil_pan.drop_available"));
        Assert.DoesNotContain(after.Relations, relation => relation.B.Name == "oil_pan");
    }

    [Fact]
    public void Apply_NewPart_OpensTheRelationsThatSilenceLeavesOpen()
    {
        var van = GivenSheets.Read("vehicle: van\nparts: {starter: starter}\n").Situation!;
        Assert.Empty(van.Relations);
        var after = StatementReader.Apply("part dust_cover=yes", van, Source.Stated, new DiagnosticBag())!;
        Assert.Equal(("traps", Truth.Unknown), after.Relations.Select(relation => (relation.Relation.Name, relation.Holds)).Single());
    }

    private static IEnumerable<Observation> Of(Situation situation, string path) =>
        situation.Observations.Where(observation => observation.Fact.ToString() == path);

    private static Situation Apply(string text, Source source = Source.Stated)
    {
        var bag = new DiagnosticBag();
        var after = StatementReader.Apply(text, Van, source, bag);
        Assert.Equal("", bag.ToSnippets());
        return after!;
    }
}
