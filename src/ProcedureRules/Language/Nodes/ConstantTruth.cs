using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary>A truth that does not depend on anything.</summary>
internal sealed class ConstantTruth(Truth value) : TruthNode
{
    public override Truth Evaluate(IBeliefs beliefs, Binding binding) => value;
}
