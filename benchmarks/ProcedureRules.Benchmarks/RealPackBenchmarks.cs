using BenchmarkDotNet.Attributes;

namespace ProcedureRules.Benchmarks;

/// <summary>The packs that come with the library, from disk.</summary>
[BenchmarkCategory("Load", "Memory")]
[MemoryDiagnoser]
public class RealPackBenchmarks
{
    /// <summary>All packs and archetypes, checked and compiled.</summary>
    [Benchmark]
    public ProcedureEngine Load() => Samples.Load();
}
