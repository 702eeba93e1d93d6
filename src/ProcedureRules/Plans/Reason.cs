using ProcedureRules.Inference;

namespace ProcedureRules.Plans;

/// <summary>Why something stands in a plan: one record, with its rule's words.</summary>
/// <param name="Rule">The rule's name (for a mechanism: its words).</param>
/// <param name="Pack">The rule's pack.</param>
/// <param name="Text">The reason.</param>
/// <param name="Basis">Where the knowledge comes from.</param>
/// <param name="Record">The record.</param>
public sealed record Reason(string Rule, string Pack, Wording Text, string Basis, Record Record);
