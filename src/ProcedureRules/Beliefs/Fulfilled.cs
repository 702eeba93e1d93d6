using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>Takes out work that is asked for once and was done: a plan made afterwards does not ask for it again.</summary>
/// <remarks>Work that follows a step is not meant: where the step is still to be done, so is what follows it.</remarks>
internal static class Fulfilled
{
    public static InferenceResult Without(InferenceResult result)
    {
        var done = result.Situation.Done.Where(work => Lasts(work, result.Situation)).Select(work => new Step(work.Operation, work.Part)).ToHashSet();
        if (done.Count == 0) return result;
        return new InferenceResult
        {
            Situation = result.Situation,
            Rules = result.Rules,
            Records = [.. result.Records.Select(record => Without(record, done))],
            Diagnostics = result.Diagnostics,
        };
    }

    // A mark that was stated away again has to be made again.
    private static bool Lasts(DoneWork work, Situation situation) =>
        work.Operation.Changes.All(change => !change.Aspect.IsMark || situation.StateNow(work.Part, change.Aspect) == change.To);

    private static Record Without(Record record, HashSet<Step> done)
    {
        if (!record.Effects.Any(IsDone)) return record;
        return new Record
        {
            Mechanism = record.Mechanism,
            Rule = record.Rule,
            Binding = record.Binding,
            Premises = record.Premises,
            Tests = record.Tests,
            Moments = record.Moments,
            Effects = [.. record.Effects.Where(effect => !IsDone(effect))],
        };

        bool IsDone(Effect effect) => effect is { Conclusion: Conclusion.Do { After: < 0 }, Atom: Atom.Occurs occurs } && done.Contains(occurs.Step);
    }
}
