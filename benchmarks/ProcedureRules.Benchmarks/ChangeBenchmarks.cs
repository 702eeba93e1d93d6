using BenchmarkDotNet.Attributes;
using NRules;
using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Logic;

namespace ProcedureRules.Benchmarks;

/// <summary>Something changes in a session that stands.</summary>
[BenchmarkCategory("Change")]
public class ChangeBenchmarks
{
    private BeliefState _beliefs = null!;
    private ProcedureSession _session = null!;
    private Observation[] _measured = [];
    private InferenceSession _inference = null!;
    private Situation[] _situations = [];
    private Supposition _reading = null!;
    private Supposition _hypothesis = null!;
    private ISession _stock = null!;
    private StockFact[] _readings = [];
    private int _turn;

    /// <summary>The size of the pack.</summary>
    [Params(200, 1000, 5000)]
    public int Rules { get; set; }

    /// <summary>Brings sessions to where the change happens.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var source = new PackGenerator(Rules);
        var world = new GeneratedWorld(source);
        _beliefs = world.Believe().Initial;
        _reading = world.Reading(5);
        _session = world.Engine.Open(world.Situation).Session!;
        _measured = [world.Measured(5), world.Measured(75)];
        var relation = world.Situation.Relations[0];
        _hypothesis = new Supposition.RelationHolds(relation.Relation, relation.A, relation.B, Truth.Unknown);
        _situations = [Without(world.Situation, relation), world.Situation];
        _inference = new InferenceSession(world.Rules);
        _inference.Update(world.Situation);

        var facts = StockRules.Facts(source);
        _stock = StockRules.Compile(source).CreateSession();
        _stock.InsertAll(facts);
        _stock.Fire();
        var reading = facts.OfType<StockFact>().First(fact => fact.Predicate == PackGenerator.LevelOf(0));
        _readings = [reading, reading with { Value = 5 }];
    }

    /// <summary>The stock network: one reading replaced, fired.</summary>
    [Benchmark(Baseline = true)]
    public int StockReading()
    {
        var (old, now) = _turn++ % 2 == 0 ? (_readings[0], _readings[1]) : (_readings[1], _readings[0]);
        _stock.Retract(old);
        _stock.Insert(now);
        return _stock.Fire();
    }

    /// <summary>One reading measured again in a session: what was said is replaced, and everything believed follows.</summary>
    [Benchmark]
    public BeliefState SessionReading()
    {
        _session.State(_measured[_turn++ % 2]);
        return _session.Beliefs;
    }

    /// <summary>One reading changed: beliefs only.</summary>
    [Benchmark]
    public BeliefState Reading() => _beliefs.With([_reading]);

    /// <summary>A hypothesis: one relation supposed to be unknown: beliefs only.</summary>
    [Benchmark]
    [BenchmarkCategory("Hypothesis")]
    public BeliefState Hypothesis() => _beliefs.With([_hypothesis]);

    /// <summary>One relation gone or back: the rule engine, step by step.</summary>
    [Benchmark]
    public InferenceResult Structure() => _inference.Update(_situations[_turn++ % 2]);

    private static Situation Without(Situation situation, RelationStatement relation) => new()
    {
        Title = situation.Title,
        Vocabulary = situation.Vocabulary,
        Parts = situation.Parts,
        PartStatements = situation.PartStatements,
        Relations = [.. situation.Relations.Where(other => other != relation)],
        Observations = situation.Observations,
        States = situation.States,
        Jobs = situation.Jobs,
    };
}
