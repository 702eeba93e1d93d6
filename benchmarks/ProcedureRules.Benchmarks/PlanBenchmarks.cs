using BenchmarkDotNet.Attributes;
using ProcedureRules.Planning;

namespace ProcedureRules.Benchmarks;

/// <summary>The packs that come with the library, on the sample jobs.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private ProcedureEngine _engine = null!;
    private ProcedureSession _session = null!;
    private string _order = "";

    /// <summary>The sample work order.</summary>
    [Params("starter", "oil-pan")]
    public string Job { get; set; } = "";

    /// <summary>Loads and opens.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _order = Repository.Path($"samples/jobs/{Job}.yaml");
        _engine = Load();
        _session = Open();
    }

    /// <summary>All packs from disk, checked and compiled.</summary>
    [Benchmark]
    public ProcedureEngine Load()
    {
        var loaded = ProcedureEngine.Load(Repository.Path("rules"));
        return loaded.Engine ?? throw new InvalidOperationException(string.Join('\n', loaded.Diagnostics));
    }

    /// <summary>A session: sheet and order read, inferred, believed.</summary>
    [Benchmark]
    public ProcedureSession Open()
    {
        var opened = _engine.Open(_order);
        return opened.Session ?? throw new InvalidOperationException(string.Join('\n', opened.Diagnostics));
    }

    /// <summary>The plan, validated.</summary>
    [Benchmark]
    public PlanResult Plan() => _session.Plan();
}
