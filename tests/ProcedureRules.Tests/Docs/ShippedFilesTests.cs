using System.Text.Json;
using System.Text.RegularExpressions;
using Json.Schema;
using ProcedureRules.Diagnostics;
using ProcedureRules.Explaining;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using ProcedureRules.Scheduling;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using ProcedureRules.Tests.Shapes;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>Every YAML file that ships names its schema in its first line and is valid by it, as an editor would find.</summary>
public partial class ShippedFilesTests
{
    public static TheoryData<string> Files => new(
        RepositoryFiles.Under("rules", "*.yaml").Concat(RepositoryFiles.Under("samples", "*.yaml")).Select(path => Path.GetRelativePath(RepositoryFiles.Root, path)));

    public static TheoryData<string> Orders => new(Files.Select(row => row.Data).Where(file => Expected(file).Contains("work_order", StringComparison.Ordinal)));

    private static readonly Lazy<ProcedureEngine> Engine = new(() => ProcedureEngine.Load(RepositoryFiles.PathOf("rules")).Engine!);

    [Theory]
    [MemberData(nameof(Files))]
    public void Yaml_ByTheSchemaThatItsFirstLineNames_IsValid(string file)
    {
        var path = RepositoryFiles.PathOf(file);
        var text = File.ReadAllText(path);
        var schema = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, SchemaOf(text)));
        var bag = new DiagnosticBag();
        var json = YamlToJson.Convert(YamlReader.Read(new SourceFile(file, text), bag)!)!.ToJsonString();

        Assert.Equal(Expected(file), Path.GetRelativePath(RepositoryFiles.Root, schema).Replace('\\', '/'));
        Assert.Equal("", bag.ToSnippets());
        AssertValid(json, schema);
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void PlanJson_OfEverySample_IsValidByItsSchema(string order)
    {
        var plan = Engine.Value.Open(RepositoryFiles.PathOf(order)).Session!.Plan(TestContext.Current.CancellationToken).Plan;
        var schema = RepositoryFiles.PathOf("rules", "schema", "plan.schema.json");

        AssertValid(PlanJson.Write(plan!, UnitSystem.Us), schema);
        AssertValid(PlanJson.Write(plan!, UnitSystem.Si), schema);
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void ScheduleJson_OfEverySample_IsValidByItsSchema(string order)
    {
        var plan = Engine.Value.Open(RepositoryFiles.PathOf(order)).Session!.Plan(TestContext.Current.CancellationToken).Plan;
        var schedule = Scheduler.Schedule(plan!, Workshop.Usual with { Technicians = 2 }, new DateTime(2026, 11, 25, 8, 0, 0), TestContext.Current.CancellationToken);

        AssertValid(ScheduleJson.Write(schedule, UnitSystem.Us), RepositoryFiles.PathOf("rules", "schema", "schedule.schema.json"));
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void WhyJson_OfEverythingInEverySample_IsValidByItsSchema(string order)
    {
        var plan = Engine.Value.Open(RepositoryFiles.PathOf(order)).Session!.Plan(TestContext.Current.CancellationToken).Plan!;

        AssertValid(WhyJson.Write([.. PlanContents.Of(plan).Select(entry => Why.Of(plan, entry))], UnitSystem.Si), RepositoryFiles.PathOf("rules", "schema", "why.schema.json"));
    }

    [Theory]
    [InlineData("oil-pan", "jack_under_pan(engine)")]
    [InlineData("oil-pan", "Left-hand thread")]
    [InlineData("oil-change", "raise_engine")]
    public void WhyNotJson_OfWhatIsNotThere_IsValidByItsSchema(string order, string item)
    {
        var session = Shipped.Open(order);
        var answer = WhyNot.Of(Shipped.PlanOf(session), session.Beliefs, item, TestContext.Current.CancellationToken);

        AssertValid(WhyNotJson.Write(answer!, UnitSystem.Us), RepositoryFiles.PathOf("rules", "schema", "why_not.schema.json"));
    }

    [Theory]
    [InlineData("oil_pan.drop_available=6 in")]
    [InlineData("oil_pan.drop_available=2.5 in")]
    [InlineData("oil_pan.drop_available=2 in")]
    public void DifferenceJson_OfASupposition_IsValidByItsSchema(string statement)
    {
        var difference = Shipped.Open("oil-pan").Suppose([statement], TestContext.Current.CancellationToken).Difference!;

        AssertValid(DifferenceJson.Write(difference, UnitSystem.Us), RepositoryFiles.PathOf("rules", "schema", "what_if.schema.json"));
    }

    [Fact]
    public void Files_OfEachSort_AreFound()
    {
        var schemas = Files.Select(row => Expected(row.Data)).GroupBy(schema => schema).ToDictionary(group => group.Key, group => group.Count());

        Assert.True(schemas["rules/schema/pack.schema.json"] >= 8);
        Assert.True(schemas["rules/schema/vehicle.schema.json"] >= 6);
        Assert.True(schemas["rules/schema/work_order.schema.json"] >= 8);
        Assert.True(schemas["rules/schema/scenario.schema.json"] >= 12);
    }

    private static string Expected(string file)
    {
        var folders = file.Split('/', '\\');
        var sort = folders[^2] is "archetypes" or "vehicles" ? "vehicle" : folders[^2] == "jobs" ? "work_order" : folders.Contains("scenarios") ? "scenario" : folders[^2] == "samples" ? "shop" : "pack";
        return $"rules/schema/{sort}.schema.json";
    }

    private static void AssertValid(string json, string schemaPath)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(schemaPath), new BuildOptions { SchemaRegistry = new SchemaRegistry() });
        using var document = JsonDocument.Parse(json);
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        var errors = (result.Details ?? []).Where(detail => detail.Errors is not null)
            .Select(detail => $"{detail.InstanceLocation}: {string.Join(", ", detail.Errors!.Values)}");

        Assert.True(result.IsValid, string.Join('\n', errors));
    }

    private static string SchemaOf(string text) => FirstLine().Match(text) is { Success: true } match ? match.Groups[1].Value : "";

    [GeneratedRegex(@"\A# yaml-language-server: \$schema=(\S+)\r?\n")]
    private static partial Regex FirstLine();
}
