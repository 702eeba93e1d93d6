using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// Whether anybody can hear that a record says other words. Words that surely stand in the plan hang on nothing, and nothing hangs on them: only
/// who expects words that are in them can notice.
/// </summary>
internal static class Hearing
{
    /// <summary>Whether a plan has to be made to know.</summary>
    /// <param name="stage">The moment.</param>
    /// <param name="before">The record as it is.</param>
    /// <param name="formBefore">Its form.</param>
    /// <param name="after">The record as it would be.</param>
    /// <param name="formAfter">Its form.</param>
    public static bool IsDue(Stage stage, Record before, RecordForm formBefore, Record after, RecordForm formAfter)
    {
        if (formBefore.Equals(formAfter)) return false;
        if (!formBefore.IsSettled || !formAfter.IsSettled || !before.Moments.SequenceEqual(after.Moments)) return true;
        IReadOnlyList<Effect> old = formBefore.IsOff ? [] : before.Effects, now = formAfter.IsOff ? [] : after.Effects;
        return IsHeard(stage, before, old.Except(now).Concat(now.Except(old)));
    }

    /// <summary>Whether a plan has to be made to know what a record does that comes in anew.</summary>
    public static bool IsDue(Stage stage, Record record)
    {
        var truths = record.Tests.Select(test => test.Evaluate(stage.Outcome.Beliefs, record.Binding)).ToList();
        return !truths.Contains(Truth.No) && (truths.Contains(Truth.Unknown) || IsHeard(stage, record, record.Effects));
    }

    /// <summary>Whether what a conclusion says, of any step or part, can be noticed otherwise than by its words, or may be expected by them.</summary>
    public static bool MayBeHeard(Stage stage, Conclusion conclusion) => TextOf(conclusion) is not { } text
        || stage.Judging.Any(expected => expected is QuestionExpected || (expected is WordsExpected words
            && (text.Text.Contains(words.Words, StringComparison.OrdinalIgnoreCase) || (text.Text.Contains('{', StringComparison.Ordinal) && RuleTexts.CanRender(text.Text, words.Words)))));

    /// <summary>Whether effects of a record, which come or go, can be noticed otherwise than by their words, or are expected by them.</summary>
    private static bool IsHeard(Stage stage, Record record, IEnumerable<Effect> effects)
    {
        var beliefs = stage.Outcome.Plan.Beliefs;
        if (beliefs.Network != stage.Outcome.Beliefs.Network || record.Premises.Any(premise => beliefs.Required(premise) != Assurance.Sure)) return true;
        foreach (var effect in effects)
        {
            if (TextOf(effect.Conclusion) is not { } text) return true;
            var said = text.Render(beliefs, record.Binding, UnitSystem.Us);
            if (stage.Judging.Any(expected => expected is WordsExpected words && said.Contains(words.Words, StringComparison.OrdinalIgnoreCase))) return true;
        }

        return false;
    }

    /// <summary>The words of a conclusion, of whatever sort it is.</summary>
    public static Template? AnyTextOf(Conclusion? conclusion) => conclusion switch
    {
        Conclusion.Check check => check.Text,
        Conclusion.Wait wait => wait.Text,
        Conclusion.Stop stop => stop.Text,
        Conclusion.Offer offer => offer.Text,
        _ => TextOf(conclusion),
    };

    private static Template? TextOf(Conclusion? conclusion) => conclusion switch
    {
        Conclusion.Caution caution => caution.Text,
        Conclusion.Detail detail => detail.Text,
        Conclusion.Tool tool => tool.Text,
        Conclusion.Supply supply => supply.Text,
        _ => null,
    };
}
