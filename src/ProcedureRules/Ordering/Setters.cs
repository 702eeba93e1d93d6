using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Ordering;

/// <summary>What sets a fact that only rules set, or demands something of one: the records that possibly do.</summary>
internal sealed class Setters(BeliefState beliefs)
{
    private ILookup<FactKey, RecordEffect>? _effects;

    public IEnumerable<Record> Of(FactKey key)
    {
        foreach (var effect in (_effects ??= All())[key])
            if (beliefs.Available(effect.Record, effect.Index) > Assurance.No) yield return effect.Record;
    }

    private ILookup<FactKey, RecordEffect> All() => beliefs.Network.RecordsWith<Conclusion.Set>()
        .Concat(beliefs.Network.RecordsWith<Conclusion.Demand>())
        .ToLookup(effect => effect.Effect.Fact!.Value);
}
