namespace ProcedureRules.Language.Nodes;

/// <summary>
/// A node that evaluates others once for each part of a kind. They are no children: outside of it their variable stands for nothing.
/// </summary>
internal interface IGathers
{
    /// <summary>What is evaluated for each part.</summary>
    IReadOnlyList<Node> Gathered { get; }
}
