using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary>A yes-or-no value read as a condition.</summary>
internal sealed class YesNoTruth(WordsNode operand) : TruthNode
{
    public WordsNode Operand { get; } = operand;

    public override IReadOnlyList<Node> Children { get; } = [operand];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding) => Operand.Evaluate(beliefs, binding) switch
    {
        1 => Truth.No,
        2 => Truth.Yes,
        _ => Truth.Unknown,
    };
}
