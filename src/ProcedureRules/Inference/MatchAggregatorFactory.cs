using NRules.Aggregators;
using NRules.RuleModel;

namespace ProcedureRules.Inference;

/// <summary>Makes the matching of a session.</summary>
internal sealed class MatchAggregatorFactory : IAggregatorFactory
{
    /// <inheritdoc/>
    public void Compile(AggregateElement element, IReadOnlyCollection<IAggregateExpression> compiledExpressions)
    {
        // The session's data comes with the tuple; its expression only ties the aggregate to it.
    }

    /// <inheritdoc/>
    public IAggregator Create(AggregationContext context) => new MatchAggregator();
}
