using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>a or b</c>.</summary>
internal sealed class Disjunction(TruthNode left, TruthNode right) : TruthNode
{
    public override IReadOnlyList<Node> Children { get; } = [left, right];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding)
    {
        var truth = left.Evaluate(beliefs, binding);
        return truth == Truth.Yes ? Truth.Yes : Kleene.Or(truth, right.Evaluate(beliefs, binding));
    }
}
