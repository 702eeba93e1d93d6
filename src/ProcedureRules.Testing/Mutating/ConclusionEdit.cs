using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Expectations;

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

    public override bool CanShow(Record record, Stage stage)
    {
        var beliefs = stage.Outcome.Beliefs;
        for (var effect = 0; effect < record.Effects.Count; effect++)
        {
            if (!IsIt(record.Effects[effect])) continue;
            if (other is not null && other.IfUnknown != conclusion.IfUnknown) return IsOpen(record, beliefs);
            if (beliefs.Available(record, effect) > Assurance.No && !IsUnheard(record, effect, stage)) return true;
        }

        return false;
    }

    private bool IsIt(Effect effect) => ReferenceEquals(effect.Conclusion, conclusion);

    private static bool IsOpen(Record record, BeliefState beliefs) =>
        beliefs.LabelOf(record) is { RequiredConditions: Truth.Unknown } or { AvailableConditions: Truth.Unknown };

    // Words that surely stand in the plan hang on nothing and nothing hangs on them: only who expects words that are in them can notice.
    private bool IsUnheard(Record record, int effect, Stage stage)
    {
        var beliefs = stage.Outcome.Plan.Beliefs;
        if (TextOf(conclusion) is not { } text || beliefs.Network != stage.Outcome.Beliefs.Network || beliefs.Required(record, effect) != Assurance.Sure) return false;
        var said = text.Render(beliefs, record.Binding, UnitSystem.Us);
        return !stage.Judging.Any(expected => expected is WordsExpected words && said.Contains(words.Words, StringComparison.OrdinalIgnoreCase));
    }

    private static Template? TextOf(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Caution caution => caution.Text,
        Conclusion.Detail detail => detail.Text,
        Conclusion.Tool tool => tool.Text,
        Conclusion.Supply supply => supply.Text,
        _ => null,
    };
}
