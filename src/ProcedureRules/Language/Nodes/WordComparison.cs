using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary><c>x is [a, b]</c>: yes if all open words are among them, no if none is.</summary>
internal sealed class WordComparison(Syntax.Expression syntax, WordsNode operand, ulong words) : Comparison(syntax)
{
    public WordsNode Operand { get; } = operand;

    public ulong Words { get; } = words;

    public override IReadOnlyList<Node> Children { get; } = [operand];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding)
    {
        var open = Operand.Evaluate(beliefs, binding);
        if (open == 0) return Truth.Unknown;
        return (open & ~Words) == 0 ? Truth.Yes : (open & Words) == 0 ? Truth.No : Truth.Unknown;
    }
}
