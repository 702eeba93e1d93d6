using ProcedureRules.Logic;

namespace ProcedureRules.Language.Nodes;

/// <summary>Whether two facts of one type are the same word.</summary>
internal sealed class WordEquality(Syntax.Expression syntax, WordsNode left, WordsNode right) : Comparison(syntax)
{
    public override IReadOnlyList<Node> Children { get; } = [left, right];

    public override Truth Evaluate(IBeliefs beliefs, Binding binding)
    {
        var (a, b) = (left.Evaluate(beliefs, binding), right.Evaluate(beliefs, binding));
        if (a == 0 || b == 0) return Truth.Unknown;
        return (a & b) == 0 ? Truth.No : a == b && ulong.IsPow2(a) ? Truth.Yes : Truth.Unknown;
    }
}
