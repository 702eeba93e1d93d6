using BenchmarkDotNet.Attributes;
using NRules;
using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Benchmarks;

/// <summary>A new session on a vehicle, rules compiled long ago.</summary>
[BenchmarkCategory("Session", "Memory")]
[MemoryDiagnoser]
public class SessionBenchmarks
{
    private GeneratedWorld _world = null!;
    private ISessionFactory _stock = null!;
    private IReadOnlyList<object> _facts = [];

    /// <summary>The size of the pack.</summary>
    [Params(200, 1000, 5000)]
    public int Rules { get; set; }

    /// <summary>How many of a hundred rules hold on the vehicle. The stock network fires only these; inference records what may hold.</summary>
    [Params(100, 5)]
    public int PercentHolding { get; set; }

    /// <summary>Compiles, and sees to it that both find the same.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var source = new PackGenerator(Rules, PercentHolding);
        _world = new GeneratedWorld(source);
        _stock = StockRules.Compile(source);
        _facts = StockRules.Facts(source);
        if (Stock() != _world.CountSure()) throw new InvalidOperationException("The baseline finds something else.");
    }

    /// <summary>The stock network: insert, fire, read what was derived.</summary>
    [Benchmark(Baseline = true)]
    public int Stock() => StockRules.Run(_stock, _facts);

    /// <summary>The rule engine's share: what can be concluded, from what.</summary>
    [Benchmark]
    public InferenceResult Infer() => new InferenceSession(_world.Rules).Infer(_world.Situation);

    /// <summary>All the way: how sure each conclusion is.</summary>
    [Benchmark]
    public BeliefNetwork InferAndBelieve() => _world.Believe();
}
