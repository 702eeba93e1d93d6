namespace ProcedureRules.Beliefs;

/// <summary>A node by its block, which can be told before every node has been numbered.</summary>
/// <param name="Sort">The block.</param>
/// <param name="Index">The index in the block.</param>
internal readonly record struct NodeRef(NodeSort Sort, int Index);
