using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>A condition read as a yes-or-no value.</summary>
internal sealed class TruthWords(TruthNode operand) : WordsNode(FactType.YesNo)
{
    public override IReadOnlyList<Node> Children { get; } = [operand];

    public override ulong Evaluate(IBeliefs beliefs, Binding binding) => operand.Evaluate(beliefs, binding) switch
    {
        Truth.Yes => 2,
        Truth.No => 1,
        _ => 3,
    };
}
