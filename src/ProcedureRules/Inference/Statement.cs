namespace ProcedureRules.Inference;

/// <summary>What is inserted into the rule engine besides the matcher. Identity is by reference: no two of them are ever equal.</summary>
internal abstract class Statement;
