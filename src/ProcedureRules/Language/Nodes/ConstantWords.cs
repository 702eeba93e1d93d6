using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>One or more words of a type, written out.</summary>
internal sealed class ConstantWords(FactType type, ulong words) : WordsNode(type)
{
    public ulong Words { get; } = words;

    public override ulong Evaluate(IBeliefs beliefs, Binding binding) => Words;
}
