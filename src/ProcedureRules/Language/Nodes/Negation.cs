using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>not x</c>.</summary>
internal sealed class Negation(TruthNode operand) : TruthNode
{
    public override IReadOnlyList<Node> Children { get; } = [operand];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding) => Kleene.Not(operand.Evaluate(beliefs, binding));
}
