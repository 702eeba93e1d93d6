using NRules.Aggregators;

namespace ProcedureRules.Inference;

/// <summary>The instances that came and went by one propagation, in the form the rule engine takes them.</summary>
internal sealed class InstanceChanges
{
    private readonly List<AggregationResult> _results = [];

    public IReadOnlyCollection<AggregationResult> Results => _results;

    public void Appeared(Instance instance) => _results.Add(AggregationResult.Added(instance, []));

    public void Vanished(Instance instance) => _results.Add(AggregationResult.Removed(instance));
}
