using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds rules that order the same operations the other way round, or in a ring, and do not exclude each other.</summary>
internal static class OrderCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject)
    {
        var edges = subject.Authored.Where(rule => rule.Moments.Count == 0)
            .SelectMany(rule => RuleNodes.ConclusionsOf(rule).OfType<Conclusion.Order>().Select(order => Edge.Of(rule, order)))
            .OfType<Edge>().ToList();
        var reported = new HashSet<string>(StringComparer.Ordinal);
        // Told at the last of the rules, which is the one that somebody added to others.
        foreach (var edge in edges.AsEnumerable().Reverse())
        {
            if (WayBack(edge, edges) is not { } ring) continue;
            if (!reported.Add(string.Join(' ', ring.Select(one => one.First).Order(StringComparer.Ordinal)))) continue;
            yield return new LintFinding(edge.Rule.Span, Messages.OrderContradiction(
                edge.Order.Span, [.. ring.Select(one => one.First), edge.First], ring.Skip(1).Select(one => (one.Order.Span, one.Rule.Title))));
        }
    }

    private static List<Edge>? WayBack(Edge from, List<Edge> edges)
    {
        var next = new Queue<List<Edge>>([[from]]);
        var seen = new HashSet<string>(StringComparer.Ordinal) { from.Second };
        while (next.TryDequeue(out var way))
        {
            if (way[^1].Second == from.First) return way;
            foreach (var edge in edges.Where(edge => edge.First == way[^1].Second && way.TrueForAll(other => !Exclude(other.Rule, edge.Rule))))
                if (edge.Second == from.First || seen.Add(edge.Second)) next.Enqueue([.. way, edge]);
        }

        return null;
    }

    // Words of one fact of one kind that leave nothing in common.
    private static bool Exclude(CompiledRule one, CompiledRule other) =>
        Words(one).Any(a => Words(other).Any(b => a.Fact == b.Fact && a.Kind == b.Kind && (a.Words & b.Words) == 0));

    private static IEnumerable<(FactDefinition Fact, Kind? Kind, ulong Words)> Words(CompiledRule rule) => rule.Tests.Select(written => written.Node switch
    {
        WordComparison { Operand: FactWords fact } test => (fact.Fact, rule.Variables[fact.Slot].Kind, test.Words),
        Negation { Children: [WordComparison { Operand: FactWords fact } test] } => (fact.Fact, rule.Variables[fact.Slot].Kind, ~test.Words),
        YesNoTruth { Operand: FactWords fact } => (fact.Fact, rule.Variables[fact.Slot].Kind, 2UL),
        Negation { Children: [YesNoTruth { Operand: FactWords fact }] } => (fact.Fact, rule.Variables[fact.Slot].Kind, 1UL),
        _ => ((FactDefinition Fact, Kind? Kind, ulong Words)?)null,
    }).OfType<(FactDefinition Fact, Kind? Kind, ulong Words)>();

    private sealed record Edge(CompiledRule Rule, Conclusion.Order Order, string First, string Second)
    {
        public static Edge? Of(CompiledRule rule, Conclusion.Order order) =>
            Does(rule, order.First) is { } first && Does(rule, order.Second) is { } second ? new(rule, order, first, second) : null;

        private static string? Does(CompiledRule rule, int slot) =>
            rule.Patterns.FirstOrDefault(pattern => pattern.First == slot && pattern.Predicate.Sort == PredicateSort.Does)?.Predicate.Name;
    }
}
