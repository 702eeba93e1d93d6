namespace ProcedureRules.Inference;

/// <summary>The indexes kept of a predicate's ground facts; only those that some join uses.</summary>
[Flags]
internal enum GroundIndexes
{
    None = 0,
    Exact = 1,
    ByFirst = 2,
    BySecond = 4,
    All = 8,
}
