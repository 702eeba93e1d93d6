using BenchmarkDotNet.Attributes;
using ProcedureRules.Plans;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Benchmarks;

/// <summary>Plans put in time.</summary>
[BenchmarkCategory("Schedule")]
public class ScheduleBenchmarks
{
    private static readonly DateTime Morning = new(2026, 11, 25, 8, 0, 0);
    private Plan _plan = null!;
    private WorkLoad[] _loads = [];

    /// <summary>How many technicians there are.</summary>
    [Params(1, 2)]
    public int Technicians { get; set; }

    /// <summary>Plans the shipped job with most steps, and makes up jobs.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var engine = Samples.Load();
        _plan = PlanBenchmarks.Jobs.Select(job => Samples.Open(engine, job).Plan().Plan).OfType<Plan>().MaxBy(plan => plan.Steps.Count)!;
        _loads = [GeneratedLoad.Of(60, Technicians), GeneratedLoad.Of(200, Technicians), GeneratedLoad.Of(1000, Technicians)];
    }

    /// <summary>The largest shipped job: what of its order binds, the likely case searched, the least and the most.</summary>
    [Benchmark]
    public Schedule LargestJob() => Scheduler.Schedule(_plan, Workshop.Usual with { Technicians = Technicians }, Morning);

    /// <summary>What of the order of the largest shipped job binds.</summary>
    [Benchmark]
    public object BindingOrderOfLargestJob() => BindingOrder.Of(_plan);

    /// <summary>The search alone, 60 generated steps.</summary>
    [Benchmark]
    public long Search60() => Search(_loads[0]);

    /// <summary>The search alone, 200 generated steps.</summary>
    [Benchmark]
    public long Search200() => Search(_loads[1]);

    /// <summary>The search alone, 1000 generated steps.</summary>
    [Benchmark]
    public long Search1000() => Search(_loads[2]);

    private static long Search(WorkLoad load) =>
        PlacementSearch.Best(load, new WorkCalendar(OpeningHours.Usual, Morning), Scheduler.MostPlaced, CancellationToken.None).Finish;
}
