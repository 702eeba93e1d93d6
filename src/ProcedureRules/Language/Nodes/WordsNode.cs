using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>An expression that is one of the words of a type; its value is the words still open, as bits.</summary>
internal abstract class WordsNode(FactType type) : Node
{
    public FactType Type { get; } = type;

    public abstract ulong Evaluate(IBeliefs beliefs, Binding binding);
}
