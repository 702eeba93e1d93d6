namespace ProcedureRules.Benchmarks;

/// <summary>What a rule of the baseline derives of a part.</summary>
internal sealed record StockResult(int Rule, string Part);
