using BenchmarkDotNet.Attributes;
using ProcedureRules.Quantities;

namespace ProcedureRules.Benchmarks;

/// <summary>Each function that packs can call.</summary>
[BenchmarkCategory("Functions")]
public class FunctionBenchmarks
{
    private FunctionCall _call = null!;

    /// <summary>The functions.</summary>
    public static IEnumerable<string> Names => FunctionCall.Names;

    /// <summary>The function.</summary>
    [ParamsSource(nameof(Names))]
    public string Function { get; set; } = "";

    /// <summary>Reads the arguments.</summary>
    [GlobalSetup]
    public void Setup() => _call = FunctionCall.Of(Function);

    /// <summary>One call.</summary>
    [Benchmark]
    public Quantity Call() => _call.Result();
}
