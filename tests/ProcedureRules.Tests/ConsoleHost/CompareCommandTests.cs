using System.Text.Json;
using Json.Schema;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using ProcedureRules.Tests.Testing;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary><c>compare</c>: what it prints and how it ends.</summary>
public sealed class CompareCommandTests : IDisposable
{
    private const string Louder = "{warning: Mind the *gap* | <now>}";

    private readonly TemporaryFolder _folder = new();

    public CompareCommandTests()
    {
        Write("old", TinyPack.Text);
        _folder.Write(Path.Combine("new", "scenarios", "pan.yaml"), TinyPack.Scenario("{row: a, with: {gap: 1 in}}", "{row: b, with: {gap: 4 in}}").Text + "\nexpect: [ {plan: goes_on} ]");
    }

    [Theory]
    [InlineData("1.0.0", 2)]
    [InlineData("1.0.1", 2)]
    [InlineData("1.1.0", 0)]
    public void Compare_WithAVersion_EndsWithWhetherItsStepIsEnough(string version, int exit)
    {
        Write("new", Changed(version));
        var run = Compare();

        Assert.Equal((exit, ""), (run.Exit, run.Error));
        Assert.Contains("rule 'a small gap' has changed: then", run.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.EndsWith("1 of 2 plans changes.\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_OfTheSame_SaysSo()
    {
        Write("new", TinyPack.Text + "\n# a remark");
        var run = Compare();

        Assert.Equal(0, run.Exit);
        Assert.Contains("The packs say the same.", run.Output, StringComparison.Ordinal);
        Assert.Contains("0 of 2 plans change.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_WithMistakes_CouldNotRun()
    {
        Write("new", TinyPack.Text.Replace("fit_cover", "fit_cvoer", StringComparison.Ordinal).Replace("undo: fit_cvoer", "undo: fit_cover", StringComparison.Ordinal));

        Assert.Equal(1, Compare().Exit);
        Assert.Equal(1, RunHost.With("compare", Path.Combine(_folder.Root, "old"), Path.Combine(_folder.Root, "nowhere")).Exit);
    }

    [Fact]
    public void Markdown_OfWordsWithItsSigns_KeepsThemAsWords()
    {
        Write("new", Changed("1.0.0"));
        var page = Compare("--format", "markdown").Output;

        Assert.Contains("| tiny | 1.0.0 | 1.0.0 | minor | **1.1.0 at least** |", page, StringComparison.Ordinal);
        Assert.Contains("  - **in** WARNING: Mind the \\*gap\\* \\| \\<now\\> (at remove\\_pan(pan))", page, StringComparison.Ordinal);
        Assert.Contains("<details><summary>Plans that change: 1</summary>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_OfADifference_IsValidByItsSchema()
    {
        Write("new", Changed("1.0.0").Replace("remove_cover", "lift_cover", StringComparison.Ordinal));
        var output = Compare("--format", "json", "--generated", "2").Output;
        var schema = JsonSchema.FromText(File.ReadAllText(RepositoryFiles.PathOf("rules", "schema", "compare.schema.json")), new BuildOptions { SchemaRegistry = new SchemaRegistry() });
        using var json = JsonDocument.Parse(output);
        var result = schema.Evaluate(json.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });

        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(detail => detail.Errors is not null).Select(detail => $"{detail.InstanceLocation}: {string.Join(", ", detail.Errors!.Values)}")));
        Assert.Equal("2.0.0", json.RootElement.GetProperty("versions")[0].GetProperty("least").GetString());
        Assert.Equal(4, json.RootElement.GetProperty("compared").GetInt32());
    }

    public void Dispose() => _folder.Dispose();

    private static string Changed(string version) => TinyPack.Text
        .Replace("version: 1.0.0", $"version: {version}", StringComparison.Ordinal).Replace("{danger: Mind the gap}", Louder, StringComparison.Ordinal);

    private void Write(string version, string pack) => _folder.Write(Path.Combine(version, "tiny.yaml"), pack);

    private (int Exit, string Output, string Error) Compare(params string[] more) =>
        RunHost.With(["compare", Path.Combine(_folder.Root, "old"), Path.Combine(_folder.Root, "new"), .. more]);
}
