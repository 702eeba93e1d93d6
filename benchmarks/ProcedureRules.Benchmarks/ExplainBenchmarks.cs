using BenchmarkDotNet.Attributes;
using ProcedureRules.Asking;
using ProcedureRules.Choosing;
using ProcedureRules.Explaining;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Benchmarks;

/// <summary>What is asked of a plan beside the plan: its choices, its times, why, why not, what if.</summary>
[BenchmarkCategory("Explain")]
public class ExplainBenchmarks
{
    private static readonly DateTime Morning = new(2026, 11, 25, 8, 0, 0);
    private ProcedureSession _session = null!;
    private Plan _plan = null!;
    private IReadOnlyList<PlanEntry> _items = [];
    private string _missing = "";
    private string _supposed = "";

    /// <summary>The demo job, the shipped job with most steps, and generated ones.</summary>
    [Params("oil-pan", "largest", "200 steps", "1000 steps")]
    public string Job { get; set; } = "";

    /// <summary>Plans the job.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _session = Job.EndsWith(" steps", StringComparison.Ordinal) ? GeneratedJob.Open(int.Parse(Job.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)) : Shipped();
        _plan = _session.Plan().Plan!;
        _items = PlanContents.Of(_plan);
        var vocabulary = _plan.Situation.Vocabulary;
        _missing = vocabulary.Operations.Keys.Order(StringComparer.Ordinal)
            .First(name => _plan.Steps.All(step => step.Step.Operation.Name != name) && WhyNot.Of(_plan, _session.Beliefs, name) is { Rules.Count: > 0 });
        _supposed = (from question in _plan.Questions
                     from answer in Outcomes.Of(_session.Beliefs, question.About)
                     select new SupposedFact(question.Id, new Wording(""), answer).Statement).First();
    }

    /// <summary>The best set of choices.</summary>
    [Benchmark]
    public object Choose() => new Chooser(ChoiceBook.Of(_session.Beliefs.Network), PlannerOptions.Default, CancellationToken.None).From(_session.Beliefs).First();

    /// <summary>The plan, validated.</summary>
    [Benchmark(Baseline = true)]
    public PlanResult Plan() => Planner.Plan(_session.Beliefs);

    /// <summary>The plan in time, for one technician.</summary>
    [Benchmark]
    public Schedule Schedule() => Scheduler.Schedule(_plan, Workshop.Usual, Morning);

    /// <summary>Why the last thing of the plan is there.</summary>
    [Benchmark]
    public object? WhyOne() => Why.Of(_plan, _items[^1]);

    /// <summary>Why a step that is not there is not, with the search for the smallest change that would bring it in.</summary>
    [Benchmark]
    public object? WhyNotOne() => WhyNot.Of(_plan, _session.Beliefs, _missing);

    /// <summary>What the first answer to the first question would change.</summary>
    [Benchmark]
    public WhatIf WhatIf() => _session.Suppose([_supposed]);

    /// <summary>The questions ranked.</summary>
    [Benchmark]
    public object Rank() => _session.Outlook(_plan);

    private ProcedureSession Shipped()
    {
        var engine = Samples.Load();
        return Job == "largest"
            ? PlanBenchmarks.Jobs.Select(job => Samples.Open(engine, job)).MaxBy(session => session.Plan().Plan!.Steps.Count)!
            : Samples.Open(engine, Job);
    }
}
