using NRules.Aggregators;
using NRules.RuleModel;

namespace ProcedureRules.Inference;

/// <summary>Turns atoms that come and go into instances that come and go.</summary>
internal sealed class MatchAggregator : IAggregator
{
    /// <inheritdoc/>
    public IReadOnlyCollection<AggregationResult> Add(AggregationContext context, ITuple tuple, IReadOnlyCollection<IFact> facts) =>
        SessionNetwork.WorkspaceOf(tuple).Matcher.Add(Nodes(facts)).Results;

    /// <inheritdoc/>
    public IReadOnlyCollection<AggregationResult> Modify(AggregationContext context, ITuple tuple, IReadOnlyCollection<IFact> facts) => [];

    /// <inheritdoc/>
    public IReadOnlyCollection<AggregationResult> Remove(AggregationContext context, ITuple tuple, IReadOnlyCollection<IFact> facts) =>
        SessionNetwork.WorkspaceOf(tuple).Matcher.Remove(Nodes(facts)).Results;

    private static IEnumerable<Node> Nodes(IReadOnlyCollection<IFact> facts) => facts.Select(fact => (Node)fact.Value!);
}
