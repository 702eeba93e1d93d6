using ProcedureRules.Diagnostics;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>Finds rings through something that is read: a rule whose condition or value hangs on what it concludes.</summary>
internal sealed class RingFinder(Graph graph, Strata strata, PartsByKind parts)
{
    private readonly NodeIndex _nodes = graph.Nodes;

    /// <summary>Reports one ring for each stratum that has any.</summary>
    public bool Report(DiagnosticBag diagnostics)
    {
        var reported = new HashSet<int>();
        foreach (var (reader, read) in graph.Reads)
        {
            if (strata.Of(reader) == strata.Of(read) && reported.Add(strata.Of(read)))
                diagnostics.Add(Describe(reader, read));
        }

        return reported.Count > 0;
    }

    private Diagnostic Describe(int reader, int read)
    {
        var rules = new List<CompiledRule>();
        foreach (var node in Path(reader, read))
        {
            var rule = RuleOf(node);
            if (rule is not null && !rules.Contains(rule)) rules.Add(rule);
        }

        var record = _nodes.Records[RecordOf(reader)];
        var test = record.Tests.FirstOrDefault(test => test.Reads(record.Binding, parts.Of).Any(reading => _nodes.NodeOf(reading) == read));
        return Messages.RingThroughCondition(
            test?.Span ?? record.Rule?.Span ?? SourceSpan.None, NameOf(read), [.. rules.Select(rule => (rule.Name, rule.Span))]);
    }

    // The shortest way round from the reader to what it reads.
    private List<int> Path(int from, int to)
    {
        var cameFrom = new Dictionary<int, int> { [from] = from };
        var queue = new Queue<int>([from]);
        while (queue.TryDequeue(out var node) && node != to)
        {
            foreach (var successor in graph.Successors[node])
                if (strata.Of(successor) == strata.Of(from) && cameFrom.TryAdd(successor, node)) queue.Enqueue(successor);
        }

        var path = new List<int> { to };
        while (path[^1] != from) path.Add(cameFrom[path[^1]]);
        path.Reverse();
        return path;
    }

    private int RecordOf(int node)
    {
        var (sort, index) = _nodes.Locate(node);
        return sort == NodeSort.Contribution ? _nodes.Contributions[index].Record : index;
    }

    private CompiledRule? RuleOf(int node) =>
        _nodes.Locate(node).Sort is NodeSort.Record or NodeSort.Contribution ? _nodes.Records[RecordOf(node)].Rule : null;

    private string NameOf(int node)
    {
        var (sort, index) = _nodes.Locate(node);
        return sort switch
        {
            NodeSort.Atom => AtomWords.Of(_nodes.Atoms[index]),
            NodeSort.Demand => $"demanded({_nodes.Demands[index]})",
            _ => _nodes.Facts[index].ToString(),
        };
    }
}
