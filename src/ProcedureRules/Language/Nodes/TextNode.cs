using ProcedureRules.Facts;

namespace ProcedureRules.Language.Nodes;

/// <summary>An expression that is free text: shown, never reasoned with.</summary>
internal abstract class TextNode : Node
{
    public abstract Value Evaluate(IBeliefs beliefs, Binding binding);
}
