using NRules.Aggregators;
using NRules.RuleModel;

namespace ProcedureRules.Inference;

/// <summary>Makes one atom of all supports that are for the same one: it comes with the first and goes with the last.</summary>
internal sealed class MergeAggregator : IAggregator
{
    /// <inheritdoc/>
    public IReadOnlyCollection<AggregationResult> Add(AggregationContext context, ITuple tuple, IReadOnlyCollection<IFact> facts)
    {
        var results = new List<AggregationResult>(facts.Count);
        foreach (var fact in facts)
        {
            if (fact.Value is Support { Node: var node })
            {
                if (node.Supports++ == 0) results.Add(AggregationResult.Added(node, []));
            }
            else if (fact.Value is Withdrawal withdrawal)
            {
                foreach (var withdrawn in withdrawal.Nodes)
                {
                    withdrawn.IsWithdrawn = true;
                    results.Add(AggregationResult.Removed(withdrawn));
                }
            }
        }
        return results;
    }

    /// <inheritdoc/>
    public IReadOnlyCollection<AggregationResult> Modify(AggregationContext context, ITuple tuple, IReadOnlyCollection<IFact> facts) => [];

    /// <inheritdoc/>
    public IReadOnlyCollection<AggregationResult> Remove(AggregationContext context, ITuple tuple, IReadOnlyCollection<IFact> facts)
    {
        var workspace = SessionNetwork.WorkspaceOf(tuple);
        var results = new List<AggregationResult>(facts.Count);
        foreach (var fact in facts)
        {
            if (fact.Value is not Support { Node: var node }) continue;
            if (--node.Supports > 0)
            {
                workspace.HasWeakened = true;
                continue;
            }
            if (!node.IsWithdrawn) results.Add(AggregationResult.Removed(node));
            workspace.Nodes.HasFallen(node);
        }
        return results;
    }
}
