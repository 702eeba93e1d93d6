using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>if(c, a, b)</c> over conditions; where the first is unknown, what both agree on.</summary>
internal sealed class ChosenTruth(TruthNode condition, TruthNode yes, TruthNode no) : TruthNode
{
    public override IReadOnlyList<Node> Children { get; } = [condition, yes, no];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding)
    {
        var truth = condition.Evaluate(beliefs, binding);
        if (truth == Truth.Yes) return yes.Evaluate(beliefs, binding);
        var otherwise = no.Evaluate(beliefs, binding);
        return truth == Truth.No || otherwise == yes.Evaluate(beliefs, binding) ? otherwise : Truth.Unknown;
    }
}
