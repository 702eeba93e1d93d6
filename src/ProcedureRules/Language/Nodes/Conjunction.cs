using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>a and b</c>.</summary>
internal sealed class Conjunction(TruthNode left, TruthNode right) : TruthNode
{
    public override IReadOnlyList<Node> Children { get; } = [left, right];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding)
    {
        var truth = left.Evaluate(beliefs, binding);
        return truth == Truth.No ? Truth.No : Kleene.And(truth, right.Evaluate(beliefs, binding));
    }
}
