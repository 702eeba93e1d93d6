using ProcedureRules.Facts;
using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>Everything that can be concluded of a situation, whatever the open facts turn out to be: the records, in a stable order.</summary>
public sealed class InferenceResult
{
    /// <summary>What it was inferred from.</summary>
    public required Situation Situation { get; init; }

    /// <summary>The rules.</summary>
    public required RuleBase Rules { get; init; }

    /// <summary>The records.</summary>
    public required IReadOnlyList<Record> Records { get; init; }
}
