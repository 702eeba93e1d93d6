using ProcedureRules.Quantities;

namespace ProcedureRules.Beliefs;

/// <summary>What the demands on a fact come to. The bounds are kept as intervals, since demands and their values may be open.</summary>
/// <param name="Least">The least value that every <c>at_least</c> allows: from what is surely demanded to what may be; null without any.</param>
/// <param name="Most">The greatest value that every <c>at_most</c> allows: from what may be demanded to what surely is; null without any.</param>
public readonly record struct DemandBand(Quantity? Least, Quantity? Most);
