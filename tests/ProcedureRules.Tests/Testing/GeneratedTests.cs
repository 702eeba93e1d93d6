using FsCheck;
using FsCheck.Fluent;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Testing.FsCheck;
using ProcedureRules.Testing.Generating;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What generators make is what they say: vehicles that are read without complaint, readings that fit, packs without mistakes.</summary>
public class GeneratedTests
{
    private static readonly Config Config = Config.QuickThrowOnFailure.WithMaxTest(40);

    [Fact]
    public void Vehicle_WrittenOut_IsReadWithoutComplaint() => Check.One(Config, Prop.ForAll(Generated.Vehicles(Shipped.Engine), vehicle =>
    {
        var bag = new DiagnosticBag();
        var read = new SheetReader(Shipped.Engine.Vocabulary, Shipped.Engine.Archetypes).Read(new SourceFile("made.yaml", vehicle.ToString()), null, bag);

        Assert.Equal("", bag.ToSnippets());
        Assert.Equal(vehicle.Situation.Observations.Count, read!.Observations.Count);
        Assert.Equal(vehicle.Situation.Parts.Select(part => part.Name).Order(), read.Parts.Select(part => part.Name).Order());
    }));

    [Fact]
    public void Vehicle_OfOneSeed_IsAlwaysTheSame() =>
        Assert.Equal(GeneratedVehicle.Make(Shipped.Engine, 7).ToString(), GeneratedVehicle.Make(Shipped.Engine, 7).ToString());

    [Fact]
    public void Vehicle_ThatShrinks_EndsInAFewLinesThatStillShowIt()
    {
        // "Some engine was run hard" fails on a vehicle of forty lines; the smallest one that shows it is found.
        static bool Shows(GeneratedVehicle vehicle) => vehicle.Situation.Observations.Any(said => said.Fact.ToString() == "engine.last_run");
        var seed = Enumerable.Range(0, 100).First(seed => Shows(GeneratedVehicle.Make(Shipped.Engine, seed, "replace_starter")) && GeneratedVehicle.Make(Shipped.Engine, seed, "replace_starter").ToString().Split('\n').Length > 30);
        var vehicle = GeneratedVehicle.Make(Shipped.Engine, seed, "replace_starter");
        while (vehicle.Smaller().FirstOrDefault(Shows) is { } smaller) vehicle = smaller;

        // The starter brings its battery.
        Assert.True(vehicle.ToString().Split('\n').Length < 12, vehicle.ToString());
        Assert.Single(vehicle.Situation.Observations);
    }

    [Fact]
    public void Changes_OfAVehicle_AreStatedWithoutError() => Check.One(Config.WithMaxTest(15), Prop.ForAll(
        Arb.From(Generated.Vehicles(Shipped.Engine).Generator.SelectMany(vehicle => Generated.AnyChanges(vehicle).Generator.Select(changes => (vehicle, changes)))),
        both =>
        {
            var session = Shipped.Engine.Open(both.vehicle.Situation).Session!;
            // PR0501: a part that a change before took away has no facts any more.
            foreach (var change in both.changes) Assert.DoesNotContain(session.State(change), mistake => mistake.Severity == Severity.Error && mistake.Code != "PR0501");
        }));

    [Fact]
    public void Readings_OfAVehicle_NameFactsOfItsParts() => Check.One(Config, Prop.ForAll(
        Arb.From(Generated.Vehicles(Shipped.Engine).Generator.SelectMany(vehicle => Generated.Readings(vehicle).Generator.Select(readings => (vehicle, readings)))),
        both => Assert.All(both.readings, reading => Assert.Contains(both.vehicle.Situation.Parts, part => reading.StartsWith($"{part.Name}.", StringComparison.Ordinal)))));

    [Fact]
    public void Pack_OfTheGenerator_LoadsAndItsJobHasAPlanThatKeepsTheLaws() => Check.One(Config, Prop.ForAll(Generated.Packs(), pack =>
    {
        var loaded = pack.Load();
        Assert.Equal("", string.Concat(loaded.Diagnostics.Select(mistake => mistake.ToSnippet())));
        using var folder = new TemporaryFolder();
        folder.Write("made.yaml", pack.Sheet);
        var order = folder.Write("job.yaml", $"work_order: x\nvehicle: made.yaml\njobs: [ {GeneratedPack.Job} ]\n");
        var plan = loaded.Engine!.Open(order).Session!.Plan(TestContext.Current.CancellationToken).Plan;

        Assert.NotNull(plan);
        Assert.Empty(ProcedureRules.Testing.Laws.PackLaws.Broken(loaded.Engine!, plan));
        Assert.All(pack.Smaller(), smaller => Assert.True(smaller.Pack.Length < pack.Pack.Length && smaller.Load().Engine is not null));
    }));
}
