namespace ProcedureRules.Benchmarks;

/// <summary>
/// A fact of the baseline. The vocabulary comes with the packs, so there can be no class for each kind and reading: a fact names what it
/// states, of one part or two, with a number where it is a reading.
/// </summary>
internal sealed record StockFact(string Predicate, string First, string Second, double Value);
