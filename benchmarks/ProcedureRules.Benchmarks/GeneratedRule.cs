namespace ProcedureRules.Benchmarks;

/// <summary>A generated rule as data.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Kind">The kind of part it is about.</param>
/// <param name="FedKind">The kind of a part that the first one feeds; null where the rule has no join.</param>
/// <param name="Key">The reading it tests, of the part fed or of the part itself.</param>
/// <param name="Threshold">The level in mm above which it holds.</param>
/// <param name="OwnKey">A second reading to test, of the part itself; null where there is none.</param>
/// <param name="OwnResult">What an earlier rule derives of the part itself and this one needs; null where there is none.</param>
/// <param name="Result">The number of the derived fact among those of the kind.</param>
internal sealed record GeneratedRule(int Number, int Kind, int? FedKind, int Key, int Threshold, int? OwnKey, int? OwnResult, int Result);
