using ProcedureRules.Inference;

namespace ProcedureRules.Beliefs;

/// <summary>One effect of one record.</summary>
/// <param name="Record">The record.</param>
/// <param name="Index">The index of the effect in <see cref="Record.Effects"/>.</param>
public readonly record struct RecordEffect(Record Record, int Index)
{
    /// <summary>The effect.</summary>
    public Effect Effect => Record.Effects[Index];
}
