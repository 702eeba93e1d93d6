using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Packs;

public sealed class ShippedPacksTests
{
    private static readonly string[] SheetFolders = ["vehicles", "jobs"];
    private static readonly (PackSet Packs, string Complaints) Shipped = ReadShipped();

    public static TheoryData<string> Sheets =>
        [.. SheetFolders
            .SelectMany(folder => Directory.EnumerateFiles(RepositoryFiles.PathOf("samples", folder), "*.yaml"))
            .Select(path => Path.GetRelativePath(RepositoryFiles.PathOf("samples"), path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)];

    public static TheoryData<string> Archetypes => [.. Shipped.Packs.Archetypes.Keys.Order(StringComparer.Ordinal)];

    [Fact]
    public void Read_RulesFolder_NoComplaint()
    {
        Assert.Equal("", Shipped.Complaints);
        Assert.NotEmpty(Shipped.Packs.Headers);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void ReadFile_Sample_NoComplaint(string path)
    {
        var bag = new DiagnosticBag();
        var situation = new SheetReader(Shipped.Packs.Vocabulary, Shipped.Packs.Archetypes).ReadFile(RepositoryFiles.PathOf("samples", path), bag);
        Assert.Equal("", bag.ToSnippets());
        Assert.NotNull(situation);
    }

    [Theory]
    [MemberData(nameof(Archetypes))]
    public void Read_Archetype_NoComplaint(string name)
    {
        var bag = new DiagnosticBag();
        new SheetReader(Shipped.Packs.Vocabulary, Shipped.Packs.Archetypes).Read(new SourceFile("van.yaml", $"vehicle: x\narchetype: {name}\n"), null, bag);
        Assert.Equal("", bag.ToSnippets());
    }

    private static (PackSet Packs, string Complaints) ReadShipped()
    {
        var bag = new DiagnosticBag();
        var packs = RuleFolder.Read(RepositoryFiles.PathOf("rules"), bag);
        return (packs, bag.ToSnippets());
    }
}
