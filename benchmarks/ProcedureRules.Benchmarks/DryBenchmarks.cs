using BenchmarkDotNet.Attributes;
using ProcedureRules.Beliefs;
using ProcedureRules.Plans;

namespace ProcedureRules.Benchmarks;

/// <summary>A little of everything, to see in CI that the benchmarks still run: <c>--anyCategories Dry --job Dry</c>.</summary>
[BenchmarkCategory("Dry")]
public class DryBenchmarks
{
    private const int Rules = 200;

    private readonly PackGenerator _source = new(Rules);
    private GeneratedWorld _world = null!;
    private BeliefState _beliefs = null!;

    /// <summary>Compiles, and sees to it that the baseline finds the same.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _world = new GeneratedWorld(_source);
        _beliefs = _world.Believe().Initial;
        if (Stock() != _world.CountSure()) throw new InvalidOperationException("The baseline finds something else.");
    }

    /// <summary>The baseline.</summary>
    [Benchmark(Baseline = true)]
    public int Stock() => StockRules.Run(StockRules.Compile(_source), StockRules.Facts(_source));

    /// <summary>From text.</summary>
    [Benchmark]
    public ProcedureEngine FromText() => GeneratedWorld.Load(_source);

    /// <summary>From facts to beliefs.</summary>
    [Benchmark]
    public BeliefNetwork InferAndBelieve() => _world.Believe();

    /// <summary>What is supposed, on beliefs that stand.</summary>
    [Benchmark]
    public BeliefState Suppose() => _beliefs.With([_world.Reading(5)]);

    /// <summary>From the packs that come with the library to a plan.</summary>
    [Benchmark]
    public PlanResult Plan() => Samples.Open(Samples.Load(), "starter").Plan();
}
