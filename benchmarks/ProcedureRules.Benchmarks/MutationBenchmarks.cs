using BenchmarkDotNet.Attributes;
using ProcedureRules.Testing;

namespace ProcedureRules.Benchmarks;

/// <summary>Changes of one rule after the other, noticed or not: what is known without a plan, against a plan for each.</summary>
[BenchmarkCategory("Mutation")]
public class MutationBenchmarks
{
    private const int Mutants = 24;
    private ProcedureEngine _engine = null!;
    private IReadOnlyList<ScenarioCase> _cases = [];

    /// <summary>Loads the shipped packs and their scenarios on the clutch.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _engine = Samples.Load();
        _cases = [.. ScenarioSet.Beside(_engine, Repository.Path("rules")).Cases.Where(one => one.IsMeantBy("clutch"))];
    }

    /// <summary>The scenarios alone, which a run of mutants begins with.</summary>
    [Benchmark]
    public int Scenarios() => Run(0, isThorough: false);

    /// <summary>A plan for each change at each moment that is about its rule.</summary>
    [Benchmark(Baseline = true)]
    public int PlanEach() => Run(Mutants, isThorough: true);

    /// <summary>As the command does it.</summary>
    [Benchmark]
    public int Mutate() => Run(Mutants, isThorough: false);

    private int Run(int mutants, bool isThorough) =>
        MutationReport.Of(_engine, _cases, new MutationOptions { Filter = "clutch", Limit = mutants, Seed = 5, IsThorough = isThorough }).Killed;
}
