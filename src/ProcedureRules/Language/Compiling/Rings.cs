using ProcedureRules.Diagnostics;

namespace ProcedureRules.Language.Compiling;

/// <summary>
/// Finds rules that conclude, by way of each other, what one of them has to know first. A ring over the same part is one on every
/// vehicle; a fact handed from part to part may or may not come back, which inference sees on each vehicle.
/// </summary>
internal sealed class Rings(IReadOnlyList<RuleReads> rules)
{
    private readonly Dictionary<object, List<(object To, RuleReads Rule, bool IsJudged)>> _edges = [];

    public void Report(DiagnosticBag bag)
    {
        foreach (var rule in rules)
        {
            foreach (var concluded in rule.Concluded)
            {
                foreach (var read in rule.Judged) Add(read, concluded, rule, isJudged: true);
                foreach (var read in rule.Matched) Add(read, concluded, rule, isJudged: false);
            }
        }

        var reported = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (start, edges) in _edges)
        {
            foreach (var edge in edges.Where(edge => edge.IsJudged))
            {
                if (WayBack(edge.To, start) is not { } way) continue;
                RuleReads[] ring = [edge.Rule, .. way];
                var names = ring.Select(rule => rule.Rule).Distinct().ToList();
                if (!reported.Add(string.Join('\n', names.Order(StringComparer.Ordinal)))) continue;
                bag.Add(Messages.RuleRing(edge.Rule.Span, Text(start), names, ring.Skip(1).Select(rule => (rule.Span, rule.Rule)).Distinct()));
            }
        }
    }

    private void Add(RuleReads.Key read, RuleReads.Key concluded, RuleReads rule, bool isJudged)
    {
        if (read.Slot >= 0 && concluded.Slot >= 0 && read.Slot != concluded.Slot) return;
        if (!_edges.TryGetValue(Node(read), out var edges)) _edges[Node(read)] = edges = [];
        edges.Add((Node(concluded), rule, isJudged));
    }

    private List<RuleReads>? WayBack(object from, object to)
    {
        var ways = new Dictionary<object, List<RuleReads>> { [from] = [] };
        var next = new Queue<object>([from]);
        while (next.TryDequeue(out var node))
        {
            if (node.Equals(to)) return ways[node];
            foreach (var edge in _edges.GetValueOrDefault(node) ?? [])
                if (ways.TryAdd(edge.To, [.. ways[node], edge.Rule])) next.Enqueue(edge.To);
        }

        return null;
    }

    private static (object Definition, bool IsDemand) Node(RuleReads.Key key) => (key.Definition, key.IsDemand);

    private static string Text(object node) => node is (object definition, bool isDemand) && isDemand
        ? $"demanded({definition})"
        : ((ValueTuple<object, bool>)node).Item1.ToString()!;
}
