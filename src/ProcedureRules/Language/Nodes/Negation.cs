using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>not x</c>.</summary>
internal sealed class Negation(TruthNode operand) : TruthNode
{
    public override IReadOnlyList<Node> Children { get; } = [operand];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding) => Kleene.Not(operand.Evaluate(beliefs, binding));
}
