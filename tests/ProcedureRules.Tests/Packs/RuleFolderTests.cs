using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Packs;
using Xunit;

namespace ProcedureRules.Tests.Packs;

public sealed class RuleFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("rules").FullName.Replace('\\', '/');

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Read_Folder_TakesPacksFromAnywhereAndArchetypesFromTheirs()
    {
        Write("base.yaml", GivenPacks.Base);
        Write("engine/more.yml", GivenPacks.Pack("kinds:\n  gear_starter: {is: starter}"));
        Write("archetypes/front.yaml", "vehicle: x\n");
        Write("scenarios/one.yaml", "scenario: x\n");
        Write("schema/pack.schema.json", "{}");
        Write("README.md", "# x");
        var bag = new DiagnosticBag();
        var packs = RuleFolder.Read(_folder, bag);
        Assert.Equal("", bag.ToSnippets());
        Assert.Equal(["base", "shop"], packs.Headers.Select(header => header.Name));
        Assert.Equal(["front"], packs.Archetypes.Keys);
    }

    [Fact]
    public void Read_NoSuchFolder_IsTold()
    {
        var bag = new DiagnosticBag();
        Assert.Empty(RuleFolder.Read("no/such/folder", bag).Headers);
        Assert.Equal("no/such/folder:1:1: error PR0001: there is no such folder\n", bag.ToSnippets());
    }

    [Fact]
    public void Read_TextsAtHand_AreSortedByTheirFolders()
    {
        var bag = new DiagnosticBag();
        var packs = RuleFolder.Read([new SourceFile("base.yaml", GivenPacks.Base), new SourceFile("archetypes/front.yaml", "vehicle: x\n")], bag);
        Assert.Equal("", bag.ToSnippets());
        Assert.Single(packs.Headers);
        Assert.Single(packs.Archetypes);
    }

    [Fact]
    public void ReadFile_WorkOrder_FindsItsVehicleBesideIt()
    {
        Write("vehicles/van.yaml", GivenVan);
        Write("jobs/starter.yaml", "work_order: x\nvehicle: ../vehicles/van.yaml\njobs: [replace_starter]\n");
        var (situation, bag) = ReadFile("jobs/starter.yaml");
        Assert.Equal("", bag.ToSnippets());
        Assert.Equal("van", situation!.Title);
        Assert.Single(situation.Jobs);
    }

    [Fact]
    public void ReadFile_WorkOrderWithoutVehicle_IsTold()
    {
        Write("starter.yaml", "work_order: x\njobs: [replace_starter]\n");
        var (situation, bag) = ReadFile("starter.yaml");
        Assert.Null(situation);
        Assert.Equal(
            $"""
            {_folder}/starter.yaml:1:13: error PR0102: this work order does not name its vehicle sheet as 'vehicle'
            1 | work_order: x
              |             ^

            """,
            bag.ToSnippets());
    }

    [Fact]
    public void ReadFile_VehicleMissing_IsTold()
    {
        Write("starter.yaml", "work_order: x\nvehicle: van.yaml\njobs: [replace_starter]\n");
        var (situation, bag) = ReadFile("starter.yaml");
        Assert.Null(situation);
        Assert.Equal($"{_folder}/van.yaml:1:1: error PR0001: there is no such file\n", bag.ToSnippets());
    }

    [Fact]
    public void ReadFile_WorkOrderWithoutItsTitle_IsTakenForAWorkOrder()
    {
        Write("van.yaml", GivenVan);
        Write("starter.yaml", "vehicle: van.yaml\njobs: [replace_starter]\n");
        var mistake = Assert.Single(ReadFile("starter.yaml").Bag.Ordered());
        Assert.Contains("work_order", mistake.Message, StringComparison.Ordinal);
    }

    private const string GivenVan = "vehicle: van\nparts: {starter: starter}\n";

    private (Situation? Situation, DiagnosticBag Bag) ReadFile(string path)
    {
        var bag = new DiagnosticBag();
        var vocabulary = GivenPacks.Read(GivenPacks.Base).Packs.Vocabulary;
        return (new SheetReader(vocabulary, new Dictionary<string, SourceFile>()).ReadFile($"{_folder}/{path}", bag), bag);
    }

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, path))!);
        File.WriteAllText(Path.Combine(_folder, path), text);
    }
}
