using BenchmarkDotNet.Attributes;
using ProcedureRules.Explaining;
using ProcedureRules.Planning;

namespace ProcedureRules.Benchmarks;

/// <summary>Questions about a plan that stands: why, why not, what if. On the demo job and on the shipped job with most steps.</summary>
[BenchmarkCategory("Explain")]
public class ExplainBenchmarks
{
    private ProcedureSession _demo = null!;
    private Plan _demoPlan = null!;
    private Plan _largest = null!;
    private string[] _statement = [];

    /// <summary>Plans both.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var engine = Samples.Load();
        _demo = Samples.Open(engine, "oil-pan");
        _demoPlan = _demo.Plan().Plan!;
        _largest = PlanBenchmarks.Jobs.Select(job => Samples.Open(engine, job).Plan().Plan).OfType<Plan>().MaxBy(plan => plan.Steps.Count)!;
        _statement = ["oil_pan.drop_available=6 in"];
    }

    /// <summary>Why the first step of the largest job stands there.</summary>
    [Benchmark]
    public object WhyStep() => Why.Of(_largest, PlanContents.Of(_largest)[0]);

    /// <summary>Why, for everything that the plan of the largest job says.</summary>
    [Benchmark]
    public int WhyEverything() => PlanContents.Of(_largest).Sum(entry => Why.Of(_largest, entry).Tree.Because.Count);

    /// <summary>Why not, where one fact would bring it in.</summary>
    [Benchmark]
    public object? WhyNotFound() => WhyNot.Of(_demoPlan, _demo.Beliefs, "Left-hand thread");

    /// <summary>Why not, where it is proven that no fact would.</summary>
    [Benchmark]
    public object? WhyNotImpossible() => WhyNot.Of(_demoPlan, _demo.Beliefs, "jack_under_pan(engine)");

    /// <summary>What if one figure were another: both plans made and compared.</summary>
    [Benchmark]
    public WhatIf WhatIf() => _demo.Suppose(_statement);
}
