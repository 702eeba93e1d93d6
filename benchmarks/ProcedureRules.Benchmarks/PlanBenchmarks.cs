using BenchmarkDotNet.Attributes;
using ProcedureRules.Plans;

namespace ProcedureRules.Benchmarks;

/// <summary>Every sample work order on the packs that come with the library.</summary>
[BenchmarkCategory("Plan", "Memory")]
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private ProcedureEngine _engine = null!;
    private ProcedureSession _session = null!;

    /// <summary>The sample work orders.</summary>
    public static IEnumerable<string> Jobs =>
        Directory.EnumerateFiles(Repository.Path("samples/jobs"), "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal);

    /// <summary>The work order.</summary>
    [ParamsSource(nameof(Jobs))]
    public string Job { get; set; } = "";

    /// <summary>Loads and opens.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _engine = Samples.Load();
        _session = Open();
    }

    /// <summary>A session: sheet and order read, inferred, believed.</summary>
    [Benchmark]
    public ProcedureSession Open() => Samples.Open(_engine, Job);

    /// <summary>The plan, validated.</summary>
    [Benchmark]
    public PlanResult Plan() => _session.Plan();
}
