using ProcedureRules.Facts;
using ProcedureRules.Logic;
using Xunit;

namespace ProcedureRules.Tests.Facts;

public sealed class ArchetypeTests
{
    private const string Front = """
        vehicle: Any van with the engine in front
        parts:
          starter: starter
          oil_pan: oil_pan
          cover: dust_cover
        relations:
          - covers(cover, oil_pan)
        facts:
          oil_pan.drop_available: 2 in
          oil_pan.dented: no
        arrival:
          vehicle.height: raised
        """;

    [Fact]
    public void Read_ArchetypeAlone_IsAssumed()
    {
        var van = Van("");
        Assert.Equal(Source.Assumed, van.PartStatements.Single(part => part.Part.Name == "cover").Source);
        Assert.Equal(Source.Assumed, van.Relations.Single(relation => relation.Relation.Name == "covers").Source);
        Assert.All(van.Observations, observation => Assert.Equal(Source.Assumed, observation.Source));
    }

    [Fact]
    public void Read_SheetSaysNo_TakesThePartAndAllThatIsSaidOfItAway()
    {
        var van = Van("parts:\n  oil_pan: no\n");
        Assert.Equal((Truth.No, Source.Stated), van.PartStatements.Where(part => part.Part.Name == "oil_pan").Select(part => (part.Exists, part.Source)).Single());
        Assert.Empty(van.Observations);
        Assert.DoesNotContain(van.Relations, relation => relation.Relation.Name == "covers");
    }

    [Fact]
    public void Read_SheetSaysUnknown_LeavesThePartOpenAndKeepsItsFacts()
    {
        var van = Van("parts:\n  oil_pan: unknown\n");
        Assert.Equal(Truth.Unknown, van.PartStatements.Single(part => part.Part.Name == "oil_pan").Exists);
        Assert.Equal(2, van.Observations.Count);
    }

    [Fact]
    public void Read_SheetNamesAMoreSpecialText_TheLastStatementCounts()
    {
        var van = Van("parts:\n  cover: {kind: dust_cover, text: two-piece cover}\nrelations:\n  - not covers(cover, oil_pan)\n");
        Assert.Equal("two-piece cover", van.Parts.Single(part => part.Name == "cover").Text);
        Assert.Equal((Truth.No, Source.Stated), van.Relations.Where(relation => relation.Relation.Name == "covers").Select(relation => (relation.Holds, relation.Source)).Single());
    }

    [Fact]
    public void Read_SheetStatesAFact_BothAreKeptWithTheirSources()
    {
        var van = Van("facts:\n  oil_pan.drop_available: 3 in\n");
        Assert.Equal(
            [Source.Assumed, Source.Stated],
            van.Observations.Where(observation => observation.Fact.Fact.Name == "drop_available").Select(observation => observation.Source));
    }

    [Fact]
    public void Read_SheetSaysFactIsUnknown_TakesTheAssumptionBack()
    {
        var van = Van("facts:\n  oil_pan.drop_available: unknown\n");
        Assert.Equal("oil_pan.dented", Assert.Single(van.Observations).Fact.ToString());
    }

    [Fact]
    public void Read_SheetSaysNormalState_TheArchetypesStateIsGone()
    {
        Assert.Empty(Van("arrival:\n  vehicle.height: ground\n").States);
    }

    [Fact]
    public void Read_WorkOrderAddsAReading_BesideTheSheets()
    {
        var (van, bag) = GivenSheets.Read(
            "vehicle: van\narchetype: front\n",
            "work_order: x\njobs: [inspect]\nfacts:\n  oil_pan.drop_available:\n    - {value: 2.5 in, source: measured, note: by hand}\n    - {value: 2.4 in, source: measured}\n",
            Front);
        Assert.Equal("", bag.ToSnippets());
        Assert.Equal(3, van!.Observations.Count(observation => observation.Fact.Fact.Name == "drop_available"));
    }

    [Fact]
    public void Read_WithAnArchetypeThatIsNotThere_ComplainsOfThatAloneAndNamesThoseThatAre()
    {
        var (_, bag) = GivenSheets.Read(
            "vehicle: van\narchetype: lorry\nfacts:\n  oil_pan.dented: yes\n  left_sump.dented: yes\n",
            "work_order: x\njobs: [inspect]\n",
            Front);
        var complaint = Assert.Single(bag.Ordered());
        Assert.Equal("van.yaml:2:12: error PR0510: there is no archetype 'lorry'", complaint.ToLine());
        Assert.Equal("the archetypes are 'front'", Assert.Single(complaint.Notes).Text);
    }

    private static Situation Van(string body)
    {
        var (van, bag) = GivenSheets.Read("vehicle: van\narchetype: front\n" + body, archetype: Front);
        Assert.Equal("", bag.ToSnippets());
        return van!;
    }
}
