namespace ProcedureRules.Benchmarks;

/// <summary>The packs and work orders that come with the library, read as an embedder would.</summary>
internal static class Samples
{
    public static ProcedureEngine Load()
    {
        var loaded = ProcedureEngine.Load(Repository.Path("rules"));
        return loaded.Engine ?? throw new InvalidOperationException(string.Join('\n', loaded.Diagnostics));
    }

    public static ProcedureSession Open(ProcedureEngine engine, string job)
    {
        var opened = engine.Open(Repository.Path($"samples/jobs/{job}.yaml"));
        return opened.Session ?? throw new InvalidOperationException(string.Join('\n', opened.Diagnostics));
    }
}
