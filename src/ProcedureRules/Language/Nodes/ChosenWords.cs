using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>if(c, a, b)</c> over words; where the condition is unknown, the words of both.</summary>
internal sealed class ChosenWords(TruthNode condition, WordsNode yes, WordsNode no) : WordsNode(yes.Type)
{
    public override IReadOnlyList<Node> Children { get; } = [condition, yes, no];

    public override ulong Evaluate(IBeliefs beliefs, Binding binding) => condition.Evaluate(beliefs, binding) switch
    {
        Truth.Yes => yes.Evaluate(beliefs, binding),
        Truth.No => no.Evaluate(beliefs, binding),
        _ => yes.Evaluate(beliefs, binding) | no.Evaluate(beliefs, binding),
    };
}
