using BenchmarkDotNet.Attributes;
using ProcedureRules.Beliefs;
using ProcedureRules.Language;
using ProcedureRules.Planning;

namespace ProcedureRules.Benchmarks;

/// <summary>A little of everything, to see in CI that the benchmarks still run: <c>--anyCategories smoke --job Dry</c>.</summary>
[BenchmarkCategory("smoke")]
public class SmokeBenchmarks
{
    private const int Rules = 200;

    private readonly PackGenerator _source = new(Rules);
    private GeneratedWorld _world = null!;

    /// <summary>Compiles, and sees to it that the baseline finds the same.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _world = new GeneratedWorld(_source);
        if (Stock() != _world.CountSure()) throw new InvalidOperationException("The baseline finds something else.");
    }

    /// <summary>The baseline.</summary>
    [Benchmark(Baseline = true)]
    public int Stock() => StockRules.Run(StockRules.Compile(_source), StockRules.Facts(_source));

    /// <summary>From text.</summary>
    [Benchmark]
    public RuleBase FromText() => GeneratedWorld.Load(_source);

    /// <summary>From facts to beliefs.</summary>
    [Benchmark]
    public BeliefNetwork InferAndBelieve() => _world.Believe();

    /// <summary>From the packs that come with the library to a plan.</summary>
    [Benchmark]
    public PlanResult Plan()
    {
        var engine = ProcedureEngine.Load(Repository.Path("rules")).Engine ?? throw new InvalidOperationException("The packs do not load.");
        var opened = engine.Open(Repository.Path("samples/jobs/starter.yaml"));
        return opened.Session?.Plan() ?? throw new InvalidOperationException(string.Join('\n', opened.Diagnostics));
    }
}
