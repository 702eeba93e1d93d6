namespace ProcedureRules.Inference;

/// <summary>
/// One reason to hold an atom: an input, or the conclusion of one instance (then it is a linked fact, and goes with it). Two instances that
/// conclude the same atom give two supports; the merge makes one of them.
/// </summary>
internal sealed class Support(Node node) : Statement
{
    public Node Node { get; } = node;
}
