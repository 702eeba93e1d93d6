using BenchmarkDotNet.Attributes;
using NRules;

namespace ProcedureRules.Benchmarks;

/// <summary>From packs to something that can run: ours from text with all checks, the baseline from rules as data.</summary>
[BenchmarkCategory("Load", "Memory")]
[MemoryDiagnoser]
public class LoadBenchmarks
{
    private PackGenerator _source = null!;

    /// <summary>The size of the pack.</summary>
    [Params(200, 1000, 5000)]
    public int Rules { get; set; }

    /// <summary>Makes the pack.</summary>
    [GlobalSetup]
    public void Setup() => _source = new PackGenerator(Rules);

    /// <summary>The stock network.</summary>
    [Benchmark(Baseline = true)]
    public ISessionFactory Stock() => StockRules.Compile(_source);

    /// <summary>YAML text, vocabulary, checks, compiled expressions.</summary>
    [Benchmark]
    public ProcedureEngine FromText() => GeneratedWorld.Load(_source);
}
