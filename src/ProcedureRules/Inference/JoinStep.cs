namespace ProcedureRules.Inference;

/// <summary>One further condition of a join, after a new ground fact has met one of them.</summary>
/// <param name="Pattern">The index of the condition in its rule.</param>
/// <param name="Access">By which index it is matched.</param>
internal readonly record struct JoinStep(int Pattern, JoinAccess Access);
