using System.Text.Json;
using Json.Schema;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Testing.Scenarios;
using ProcedureRules.Tests.Packs;
using ProcedureRules.Tests.Repository;
using ProcedureRules.Tests.Shapes;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>
/// The committed schemas are those that the shapes give. After a change of a shape, run these tests once with the environment
/// variable PROCEDURERULES_WRITE_SCHEMAS set to 1: they write the files and fail no more.
/// </summary>
public sealed class SchemaFilesTests
{
    private static readonly Dictionary<string, string> All = SchemaFiles.All.Append(ScenarioShapes.Schema).ToDictionary();

    private static readonly Dictionary<string, JsonSchema> Schemas =
        All.ToDictionary(schema => schema.Key, schema => JsonSchema.FromText(schema.Value));

    public static TheoryData<string> Names => [.. All.Keys];

    public static TheoryData<string, string> Files =>
    [
        .. FilesIn("pack.schema.json", "rules", ""),
        .. FilesIn("vehicle.schema.json", "rules", "archetypes"),
        .. FilesIn("scenario.schema.json", "rules", "scenarios"),
        .. FilesIn("vehicle.schema.json", "samples", "vehicles"),
        .. FilesIn("work_order.schema.json", "samples", "jobs"),
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void CommittedSchema_ComparedWithShapes_IsTheSame(string name)
    {
        var path = RepositoryFiles.PathOf("rules", "schema", name);
        if (Environment.GetEnvironmentVariable("PROCEDURERULES_WRITE_SCHEMAS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, All[name]);
        }

        Assert.Equal(All[name], File.ReadAllText(path));
    }

    // An editor that knows the schema must not draw red lines under what the reader takes.
    [Theory]
    [MemberData(nameof(Files))]
    public void ShippedFile_JudgedByItsSchema_IsValid(string schema, string path)
    {
        Assert.True(IsValid(schema, File.ReadAllText(RepositoryFiles.PathOf(path))));
    }

    [Fact]
    public void PackWithMisspeltKey_JudgedByTheSchema_IsNotValid()
    {
        Assert.True(IsValid("pack.schema.json", GivenPacks.Base));
        Assert.False(IsValid("pack.schema.json", GivenPacks.Base.Replace("because:", "becuase:", StringComparison.Ordinal)));
    }

    private static bool IsValid(string schema, string yaml)
    {
        var node = YamlReader.Read(new SourceFile("file.yaml", yaml), new DiagnosticBag());
        using var document = JsonDocument.Parse(YamlToJson.Convert(node!)!.ToJsonString());
        return Schemas[schema].Evaluate(document.RootElement).IsValid;
    }

    private static IEnumerable<TheoryDataRow<string, string>> FilesIn(string schema, params string[] folder) =>
        from path in Directory.EnumerateFiles(RepositoryFiles.PathOf(folder), "*.yaml")
        orderby path
        select new TheoryDataRow<string, string>(schema, Path.GetRelativePath(RepositoryFiles.PathOf(), path).Replace('\\', '/'));
}
