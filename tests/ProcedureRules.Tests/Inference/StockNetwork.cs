using System.Linq.Expressions;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using ProcedureRules.Language;

namespace ProcedureRules.Tests.Inference;

/// <summary>
/// Every rule a rule of the stock NRules network, built with its RuleBuilder over structural facts: what the rule engine itself says the
/// instances are.
/// </summary>
internal sealed class StockNetwork
{
    private readonly HashSet<string> _instances = [];

    public StockNetwork(IEnumerable<CompiledRule> rules, IEnumerable<(Predicate Predicate, object? First, object? Second)> facts)
    {
        var session = new RuleCompiler().Compile(rules.Select(Build)).CreateSession();
        session.InsertAll(facts.Select(fact => new StockFact(fact.Predicate, fact.First, fact.Second)));
        session.Fire();
    }

    /// <summary>The instances, rule and binding.</summary>
    public IReadOnlySet<string> Instances => _instances;

    /// <summary>An instance of the indexed matcher, written the same way.</summary>
    public static string Describe(CompiledRule rule, Binding binding) => Describe(rule, slot => binding[slot]);

    private static string Describe(CompiledRule rule, Func<int, object> at) =>
        $"{rule.Name}[{string.Join(", ", rule.Variables.Select(variable => at(variable.Slot)))}]";

    private IRuleDefinition Build(CompiledRule rule)
    {
        var builder = new RuleBuilder();
        builder.Name(rule.Name);
        // One pattern for each condition, and one that says what each variable is.
        List<(Predicate Predicate, int First, int Second)> conditions =
        [
            .. rule.Patterns.Select(pattern => (pattern.Predicate, pattern.First, pattern.Second)),
            .. rule.Variables.Select(variable => (
                variable.Sort == Sort.Step ? new Predicate(PredicateSort.Step) : new Predicate(PredicateSort.Part, variable.Kind!.Name),
                variable.Slot,
                -1)),
        ];
        var seen = new Dictionary<int, (string Fact, string Side)>();
        for (var i = 0; i < conditions.Count; i++)
        {
            var (predicate, first, second) = conditions[i];
            var name = $"fact{i}";
            var pattern = builder.LeftHandSide().Pattern(typeof(StockFact), name);
            var fact = Expression.Parameter(typeof(StockFact), name);
            pattern.Condition(Expression.Lambda<Func<StockFact, bool>>(
                Expression.Equal(Expression.Property(fact, nameof(StockFact.Predicate)), Expression.Constant(predicate)), fact));
            Tie(pattern, name, nameof(StockFact.First), first, seen);
            Tie(pattern, name, nameof(StockFact.Second), second, seen);
        }
        var factOf = seen.ToDictionary(entry => entry.Key, entry => entry.Value);
        Expression<Action<IContext>> note = context => Note(rule, factOf, context);
        builder.RightHandSide().Action(note);
        return builder.Build();
    }

    /// <summary>The first time a variable is met it is bound; every other time it must be the same object.</summary>
    private static void Tie(PatternBuilder pattern, string name, string side, int slot, Dictionary<int, (string Fact, string Side)> seen)
    {
        if (slot < 0 || seen.TryAdd(slot, (name, side))) return;
        var (otherName, otherSide) = seen[slot];
        var here = Expression.Parameter(typeof(StockFact), name);
        var there = otherName == name ? here : Expression.Parameter(typeof(StockFact), otherName);
        var same = Expression.Call(
            ((Func<object?, object?, bool>)Equals).Method, Expression.Property(there, otherSide), Expression.Property(here, side));
        pattern.Condition(otherName == name ? Expression.Lambda(same, here) : Expression.Lambda(same, there, here));
    }

    private void Note(CompiledRule rule, Dictionary<int, (string Fact, string Side)> factOf, IContext context) =>
        _instances.Add(Describe(rule, slot =>
        {
            var (name, side) = factOf[slot];
            var fact = (StockFact)context.Match.Facts.Single(fact => fact.Declaration.Name == name).Value!;
            return (side == nameof(StockFact.First) ? fact.First : fact.Second)!;
        }));
}
