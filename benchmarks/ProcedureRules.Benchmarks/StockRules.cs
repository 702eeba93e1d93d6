using System.Linq.Expressions;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace ProcedureRules.Benchmarks;

/// <summary>
/// The baseline: every rule, condition by condition, a rule of the stock NRules network, made with its own RuleBuilder. Conditions stand one
/// by one with constants in them, so that the network can share what rules have in common. What a rule derives is a fact like the others, which
/// further rules may match.
/// </summary>
internal static class StockRules
{
    private const string Result = "result_";

    public static ISessionFactory Compile(PackGenerator source) => new RuleCompiler().Compile(source.Rules.Select(Build));

    /// <summary>The same vehicle as plain facts.</summary>
    public static IReadOnlyList<object> Facts(PackGenerator source) =>
    [
        .. Enumerable.Range(0, PackGenerator.Parts).Select(part => new StockFact($"unit_{part}", $"p{part}", "", 0)),
        .. source.Feeds.Select(pair => new StockFact("feeds", $"p{pair.From}", $"p{pair.To}", 0)),
        .. source.Levels.Select((level, key) => new StockFact(PackGenerator.LevelOf(key), $"p{PackGenerator.PartOf(key)}", "", level)),
    ];

    /// <summary>From facts to what is derived.</summary>
    public static int Run(ISessionFactory factory, IReadOnlyList<object> facts)
    {
        var session = factory.CreateSession();
        session.InsertAll(facts);
        session.Fire();
        return session.Query<StockFact>().AsEnumerable().Count(fact => fact.Predicate.StartsWith(Result, StringComparison.Ordinal));
    }

    private static IRuleDefinition Build(GeneratedRule rule)
    {
        var builder = new RuleBuilder();
        builder.Name($"rule {rule.Number}");
        var all = builder.LeftHandSide();
        all.Pattern(typeof(StockFact), "x").Condition(Says("x", $"unit_{rule.Kind}"));
        if (rule.FedKind is { } fedKind)
        {
            var feeds = all.Pattern(typeof(StockFact), "feeds");
            feeds.Condition(Says("feeds", "feeds"));
            feeds.Condition(Join((x, feeds) => feeds.First == x.First));
            var y = all.Pattern(typeof(StockFact), "y");
            y.Condition(Says("y", $"unit_{fedKind}"));
            y.Condition(Join((feeds, y) => y.First == feeds.Second));
        }
        var reading = all.Pattern(typeof(StockFact), "reading");
        reading.Condition(Says("reading", PackGenerator.LevelOf(rule.Key)));
        reading.Condition(IsAbove("reading", rule.Threshold));
        reading.Condition(rule.FedKind is null
            ? Join((x, reading) => reading.First == x.First)
            : Join((y, reading) => reading.First == y.First));
        if (rule.OwnKey is { } ownKey)
        {
            var own = all.Pattern(typeof(StockFact), "own");
            own.Condition(Says("own", PackGenerator.LevelOf(ownKey)));
            own.Condition(IsAbove("own", 10));
            own.Condition(Join((x, own) => own.First == x.First));
        }
        if (rule.OwnResult is { } ownResult)
        {
            var own = all.Pattern(typeof(StockFact), "own");
            own.Condition(Says("own", PackGenerator.ResultOf(ownResult)));
            own.Condition(Join((x, own) => own.First == x.First));
        }
        builder.RightHandSide().Action(Concluding(PackGenerator.ResultOf(rule.Result)));
        return builder.Build();
    }

    private static Expression<Func<StockFact, StockFact, bool>> Join(Expression<Func<StockFact, StockFact, bool>> join) => join;

    private static Expression<Func<StockFact, bool>> Says(string name, string predicate)
    {
        var fact = Expression.Parameter(typeof(StockFact), name);
        return Expression.Lambda<Func<StockFact, bool>>(
            Expression.Equal(Expression.Property(fact, nameof(StockFact.Predicate)), Expression.Constant(predicate)), fact);
    }

    private static Expression<Func<StockFact, bool>> IsAbove(string name, double threshold)
    {
        var fact = Expression.Parameter(typeof(StockFact), name);
        return Expression.Lambda<Func<StockFact, bool>>(
            Expression.GreaterThan(Expression.Property(fact, nameof(StockFact.Value)), Expression.Constant(threshold)), fact);
    }

    private static Expression<Action<IContext, StockFact>> Concluding(string result)
    {
        var context = Expression.Parameter(typeof(IContext), "context");
        var x = Expression.Parameter(typeof(StockFact), "x");
        var conclude = ((Action<IContext, StockFact, string>)Conclude).Method;
        return Expression.Lambda<Action<IContext, StockFact>>(Expression.Call(conclude, context, x, Expression.Constant(result)), context, x);
    }

    private static void Conclude(IContext context, StockFact part, string result) =>
        context.InsertLinked(result, new StockFact(result, part.First, "", 0));
}
