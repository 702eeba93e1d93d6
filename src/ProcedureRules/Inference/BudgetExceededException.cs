namespace ProcedureRules.Inference;

/// <summary>Unwinds the rule engine when the budget is spent; never leaves this folder.</summary>
internal sealed class BudgetExceededException : Exception;
