using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Tests.Packs;
using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>What goes with a part is there where a sheet forgets it: a starter without a battery was unbolted with its cables live.</summary>
public sealed class CompanyTests
{
    private const string Pack = """
        pack: pump
        version: 1.0.0
        about: A pump.
        places: [bay]
        kinds:
          vehicle: {}
          engine: {}
          battery: {}
          belt: {goes_with: [battery]}
          turned: {goes_with: [engine]}
          pump: {is: turned, goes_with: [belt]}
          ribbed_belt: {is: belt}
        facts:
          battery.flat: {type: yes_no, ask: Is it flat?}
        """;

    [Theory]
    [InlineData("pump: pump", "pump, belt?, engine?, battery?")]
    [InlineData("pump: pump, ribs: ribbed_belt", "pump, ribs, engine?, battery?")]
    [InlineData("pump: pump, engine: engine, belt: no", "pump, engine")]
    [InlineData("pump: pump, belt: unknown", "pump, belt unknown, engine?")]
    [InlineData("pump: unknown", "pump unknown")]
    [InlineData("engine: engine", "engine")]
    public void Read_PartsThatOthersGoWith_BringThem(string parts, string expected) => Assert.Equal(expected, Parts(Read(parts)));

    [Fact]
    public void Rebuilt_AfterTheBatteryIsDenied_DoesNotBringItBack()
    {
        var before = Read("pump: pump");
        var builder = SituationBuilder.From(before);
        Assert.Equal(Parts(before), Parts(SituationBuilder.From(before).Build(before.Title)));

        builder.State(new PartStatement(builder.Find("battery")!, Truth.No, Source.Stated));

        Assert.Equal("pump, belt?, engine?", Parts(builder.Build(before.Title)));
    }

    [Fact]
    public void Facts_OfAPartThatWasForgotten_CanBeStated() =>
        Assert.Equal("battery.flat", Read("pump: pump", "facts: {battery.flat: yes}").Observations.Single().Fact.ToString());

    private static Situation Read(string parts, string more = "")
    {
        var (packs, complaints) = GivenPacks.Read(Pack);
        Assert.Equal("", complaints.ToSnippets());
        var bag = new DiagnosticBag();
        var situation = new SheetReader(packs.Vocabulary, new Dictionary<string, SourceFile>()).Read(new SourceFile("van.yaml", $"vehicle: van\nparts: {{{parts}}}\n{more}"), null, bag);
        Assert.Equal("", bag.ToSnippets());
        return situation!;
    }

    private static string Parts(Situation situation) => string.Join(", ", situation.PartStatements
        .Where(statement => statement.Part.Name != "vehicle" && statement.Exists != Truth.No)
        .Select(statement => statement.Part.Name + (statement.Exists == Truth.Unknown ? " unknown" : "") + (statement.Source == Source.Assumed ? "?" : "")));
}
