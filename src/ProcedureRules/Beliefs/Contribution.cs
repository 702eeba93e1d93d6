using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>An effect that has a value or a rank: it sets a fact, demands something of one, or concludes a relation.</summary>
/// <param name="Record">The index of its record.</param>
/// <param name="Index">The index of the effect in the record.</param>
/// <param name="Effect">The effect.</param>
/// <param name="Value">The value it gives; null for a relation.</param>
internal readonly record struct Contribution(int Record, int Index, Effect Effect, ValueExpression? Value)
{
    /// <summary>The value that an effect gives, if it gives one.</summary>
    public static ValueExpression? ValueOf(Effect effect) => effect.Conclusion switch
    {
        Conclusion.Set set => set.Value,
        Conclusion.Demand demand => demand.Value,
        _ => null,
    };
}
