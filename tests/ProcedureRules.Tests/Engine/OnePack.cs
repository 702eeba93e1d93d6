using ProcedureRules.Diagnostics;
using ProcedureRules.Plans;
using Xunit;

namespace ProcedureRules.Tests.Engine;

/// <summary>A session on one pack and a van with some parts, for tests that say their own pack.</summary>
internal static class OnePack
{
    public static ProcedureSession Open(string pack, string parts, string job, params string[] statements)
    {
        var loaded = ProcedureEngine.Load([new SourceFile("pack.yaml", pack.ReplaceLineEndings("\n"))]);
        Assert.True(loaded.Engine is not null, string.Join('\n', loaded.Diagnostics.Select(diagnostic => diagnostic.ToSnippet())));
        using var folder = new TemporaryFolder();
        folder.Write("van.yaml", $"vehicle: A van\nparts: {{{parts}}}\n");
        var order = folder.Write("job.yaml", $"work_order: Work on a van\nvehicle: van.yaml\njobs: [ {job} ]\n");
        var opened = loaded.Engine.Open(order);
        Assert.True(opened.Session is not null, string.Join('\n', opened.Diagnostics.Select(diagnostic => diagnostic.ToSnippet())));
        foreach (var statement in statements) Assert.Empty(opened.Session.State(statement));
        return opened.Session;
    }

    public static Plan Plan(string pack, string parts, string job, params string[] statements)
    {
        var result = Open(pack, parts, job, statements).Plan();
        Assert.True(result.Plan is not null, string.Join('\n', result.Diagnostics.Select(diagnostic => diagnostic.ToSnippet())));
        return result.Plan;
    }
}
