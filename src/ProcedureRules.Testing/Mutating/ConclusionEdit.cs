using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A conclusion is dropped, or another of its kind stands in its place.</summary>
internal sealed class ConclusionEdit(Conclusion conclusion, Conclusion? other) : RuleEdit
{
    public override Record Apply(Record record)
    {
        if (!record.Effects.Any(IsIt)) return record;
        // What further states a job passes stands behind the conclusion, without one of its own.
        var left = conclusion is Conclusion.Waypoints ? record.Effects.Where(effect => effect.Conclusion is not null) : record.Effects;
        return With(record, effects: other is null
            ? [.. left.Where(effect => !IsIt(effect))]
            : [.. left.Select(effect => IsIt(effect) ? effect with { Conclusion = other, IfUnknown = other.IfUnknown } : effect)]);
    }

    private bool IsIt(Effect effect) => ReferenceEquals(effect.Conclusion, conclusion);
}
