using ProcedureRules.Plans;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Engine;

/// <summary>The shipped packs and samples, loaded once for all tests.</summary>
internal static class Shipped
{
    private static readonly Lazy<ProcedureEngine> Loaded = new(() =>
    {
        var loaded = ProcedureEngine.Load(RepositoryFiles.PathOf("rules"));
        Assert.True(loaded.Engine is not null, string.Concat(loaded.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return loaded.Engine!;
    });

    public static ProcedureEngine Engine => Loaded.Value;

    public static IEnumerable<string> Orders => RepositoryFiles.Under("samples/jobs", "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path));

    public static ProcedureSession Open(string order, params string[] statements)
    {
        var opened = Engine.Open(RepositoryFiles.PathOf("samples", "jobs", order + ".yaml"));
        Assert.True(opened.Session is not null, string.Concat(opened.Diagnostics.Select(mistake => mistake.ToSnippet())));
        foreach (var statement in statements) Assert.Empty(opened.Session!.State(statement));
        return opened.Session!;
    }

    public static Plan Plan(string order, params string[] statements) => PlanOf(Open(order, statements));

    public static Plan PlanOf(ProcedureSession session)
    {
        var result = session.Plan(TestContext.Current.CancellationToken);
        Assert.True(result.Plan is not null, string.Concat(result.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return result.Plan!;
    }
}
