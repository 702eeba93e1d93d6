using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary>An expression that is yes, no or unknown.</summary>
internal abstract class TruthNode : Node
{
    public abstract Truth Evaluate(IBeliefs beliefs, Binding binding);
}
