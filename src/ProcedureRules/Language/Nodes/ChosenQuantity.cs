using ProcedureRules.Logic;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>if(c, a, b)</c> over quantities; where the condition is unknown, all that either gives.</summary>
internal sealed class ChosenQuantity(TruthNode condition, QuantityNode yes, QuantityNode no, Dimension result) : QuantityNode(result)
{
    public override IReadOnlyList<Node> Children { get; } = [condition, yes, no];

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding) => condition.Evaluate(beliefs, binding) switch
    {
        Truth.Yes => yes.Evaluate(beliefs, binding).As(Dimension),
        Truth.No => no.Evaluate(beliefs, binding).As(Dimension),
        _ => Quantity.Hull(yes.Evaluate(beliefs, binding).As(Dimension), no.Evaluate(beliefs, binding).As(Dimension)),
    };
}
