using ProcedureRules.Diagnostics;
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

    /// <summary>The records; the same list as before where an update changed nothing but readings. Empty where the rules did not settle.</summary>
    public required IReadOnlyList<Record> Records { get; init; }

    /// <summary>What kept the rules from settling; empty where they did.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; init; } = [];

    /// <summary>Whether everything was concluded that can be: else nothing may be planned on it.</summary>
    public bool IsSettled => Diagnostics.Count == 0;
}
