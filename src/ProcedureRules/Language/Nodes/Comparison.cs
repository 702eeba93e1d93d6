using ProcedureRules.Facts;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>A comparison that stands in a text: it can be named in a message, and it has values at which it turns.</summary>
internal abstract class Comparison(Syntax.Expression syntax) : TruthNode
{
    public Syntax.Expression Syntax { get; } = syntax;

    /// <summary>Adds the values of facts at which its truth can turn.</summary>
    public virtual void AddThresholds(List<(FactKey Key, Quantity Threshold)> thresholds, IBeliefs beliefs, Binding binding)
    {
    }
}
