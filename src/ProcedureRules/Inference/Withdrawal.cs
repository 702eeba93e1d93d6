namespace ProcedureRules.Inference;

/// <summary>Takes back atoms that hold each other up in a ring and rest on no input.</summary>
internal sealed class Withdrawal(IReadOnlyList<Node> nodes) : Statement
{
    public IReadOnlyList<Node> Nodes { get; } = nodes;
}
