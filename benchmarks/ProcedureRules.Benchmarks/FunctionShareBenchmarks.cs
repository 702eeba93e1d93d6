using BenchmarkDotNet.Attributes;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Benchmarks;

/// <summary>All functions once, beside a plan that calls some of them: together they are to stay under a twentieth of it.</summary>
[BenchmarkCategory("Functions")]
public class FunctionShareBenchmarks
{
    private FunctionCall[] _calls = [];
    private ProcedureSession _session = null!;

    /// <summary>Reads the arguments and opens the work order.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _calls = [.. FunctionCall.Names.Select(FunctionCall.Of)];
        _session = Samples.Open(Samples.Load(), "recharge");
    }

    /// <summary>The plan.</summary>
    [Benchmark(Baseline = true)]
    public PlanResult Plan() => _session.Plan();

    /// <summary>Every function once.</summary>
    [Benchmark]
    public Quantity EveryFunctionOnce()
    {
        var last = Quantity.Number(0);
        foreach (var call in _calls) last = call.Result();
        return last;
    }
}
