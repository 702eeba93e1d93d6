using ProcedureRules.Language;

namespace ProcedureRules.Tests.Inference;

/// <summary>A structural fact as the stock network takes it; public, since the network's expressions read it.</summary>
public sealed record StockFact(Predicate Predicate, object? First, object? Second);
