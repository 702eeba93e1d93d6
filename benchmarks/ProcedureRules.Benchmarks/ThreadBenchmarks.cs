using BenchmarkDotNet.Attributes;

namespace ProcedureRules.Benchmarks;

/// <summary>Sessions side by side on one rule base.</summary>
[BenchmarkCategory("Threads")]
public class ThreadBenchmarks
{
    private const int Sessions = 20;

    private GeneratedWorld _world = null!;

    /// <summary>How many threads work.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>Compiles.</summary>
    [GlobalSetup]
    public void Setup() => _world = new GeneratedWorld(new PackGenerator(1000));

    /// <summary>Twenty sessions, from facts to beliefs.</summary>
    [Benchmark]
    public void TwentySessions() =>
        Parallel.For(0, Sessions, new ParallelOptions { MaxDegreeOfParallelism = Threads }, _ => _world.Believe());
}
