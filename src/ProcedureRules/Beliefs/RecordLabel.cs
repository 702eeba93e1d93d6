using ProcedureRules.Inference;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>
/// What is believed of a record on both layers: the weakest premise, and the truth of its conditions. Its effects differ only in
/// what they do with an unknown condition.
/// </summary>
internal readonly record struct RecordLabel(
    Assurance RequiredPremises, Truth RequiredConditions, Assurance AvailablePremises, Truth AvailableConditions)
{
    /// <summary>
    /// The level of one of its effects on the required layer, where what hangs on a moment does not count, nor a step that only finds
    /// something out.
    /// </summary>
    public Assurance Required(Record record, Effect effect) =>
        record.Moments.Count > 0 || record.Mechanism == Mechanism.Find ? Assurance.No : Level(RequiredPremises, RequiredConditions, effect.IfUnknown);

    /// <summary>The level of one of its effects on the available layer, where moments count as met.</summary>
    public Assurance Available(Effect effect) => Level(AvailablePremises, AvailableConditions, effect.IfUnknown);

    /// <summary>The level of an effect under premises and conditions.</summary>
    public static Assurance Level(Assurance premises, Truth conditions, IfUnknown ifUnknown)
    {
        if (conditions == Truth.Yes) return premises;
        if (conditions == Truth.No) return Assurance.No;
        var most = ifUnknown switch
        {
            IfUnknown.Do => Assurance.Protective,
            IfUnknown.BehindCheck => Assurance.Provisional,
            _ => Assurance.Held,
        };
        return most < premises ? most : premises;
    }
}
