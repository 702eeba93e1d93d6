using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Mutating;

/// <summary>What a change makes come or go at a moment.</summary>
/// <param name="Tried">The moment.</param>
/// <param name="Effects">What comes or goes, each with the record that says it.</param>
/// <param name="Turned">The conditions that come or go, each with the record that has it.</param>
/// <param name="IsOfMoments">Whether it is when they count that changes.</param>
/// <param name="IsOpen">Whether the rule is open there, with the change and without: what a condition of it hangs on is not known.</param>
internal sealed record MadeDifference(
    TriedStage Tried, IReadOnlyList<(Record Record, Effect Effect)> Effects, IReadOnlyList<(Record Record, Test Test)> Turned, bool IsOfMoments, bool IsOpen)
{
    /// <summary>Whether the plan has the steps that it is about.</summary>
    public bool IsInPlan => Effects.Count == 0 || Effects.Any(said => Showing.IsInPlan(Tried, said.Record));

    /// <summary>Whether a check reads alike with it and without, and nothing else comes or goes.</summary>
    public bool IsSaidAlike => Effects.Count == 0 && Turned.Count == 0 && !IsOfMoments;

    /// <summary>What is known of how it shows: the likeliest of all that comes or goes.</summary>
    public DifferenceSort Sort
    {
        get
        {
            // A plan that stops asks about the steps that it would have.
            if (!IsInPlan) return !Tried.Of.At.Links.HasSteps && Effects.Any(said => Showing.IsAsked(Tried, said.Record)) ? DifferenceSort.Open : DifferenceSort.Absent;
            if (Effects.Count > 0) return IsOpen ? DifferenceSort.Open : Effects.Where(said => Showing.IsInPlan(Tried, said.Record)).Min(said => SortOf(said.Record, said.Effect));
            if (IsSaidAlike) return DifferenceSort.Absent;
            if (Turned.Count == 0) return DifferenceSort.Plain;
            var isAsked = Showing.IsAsked(Tried, Turned.SelectMany(turned => turned.Test.Reads(turned.Record.Binding, Tried.Of.Stage.Outcome.Beliefs.PartsOf)));
            return isAsked ? (IsOpen ? DifferenceSort.Open : DifferenceSort.Plain) : IsOpen ? DifferenceSort.Unasked : DifferenceSort.Open;
        }
    }

    /// <summary>What comes or goes with a change that makes other records of a rule.</summary>
    public static MadeDifference Of(Candidate candidate)
    {
        var (effects, turned, isOfMoments, isOpen) = (new List<(Record, Effect)>(), new List<(Record, Test)>(), false, true);
        for (var i = 0; i < candidate.Own.Count; i++)
        {
            var (before, after) = (candidate.Tried.Records[candidate.Tried.Of.Of[i]], candidate.Own[i]);
            if (ReferenceEquals(before, after)) continue;
            var (was, comes) = (candidate.Tried.Forms.Forms[i], candidate.Forms.Forms[i]);
            isOpen &= was.Equals(comes) || !(was.IsSettled || comes.IsSettled);
            isOfMoments |= !before.Moments.SequenceEqual(after.Moments);
            IReadOnlyList<Effect> old = was.IsOff ? [] : before.Effects, now = comes.IsOff ? [] : after.Effects;
            var (go, come) = (old.Except(now).ToList(), now.Except(old).ToList());
            effects.AddRange(go.Where(effect => !come.Exists(other => Showing.IsSaidAlike(candidate.Tried, before, effect, other))).Select(effect => (before, effect)));
            effects.AddRange(come.Where(effect => !go.Exists(other => Showing.IsSaidAlike(candidate.Tried, after, effect, other))).Select(effect => (after, effect)));
            turned.AddRange(before.Tests.Except(after.Tests).Select(test => (before, test)).Concat(after.Tests.Except(before.Tests).Select(test => (after, test))));
        }

        return new MadeDifference(candidate.Tried, effects, turned, isOfMoments, isOpen);
    }

    /// <summary>What comes with records that a changed rule makes beside those that it made before.</summary>
    public static MadeDifference Of(TriedStage tried, IEnumerable<Record> more) =>
        new(tried, [.. more.SelectMany(record => record.Effects.Select(effect => (record, effect)))], [], IsOfMoments: false, IsOpen: false);

    private DifferenceSort SortOf(Record record, Effect effect) =>
        Showing.Others(Tried, record, effect).Any() || (Showing.StateOf(record, effect) is { } state && Showing.IsSoAnyway(Tried, state)) ? DifferenceSort.Anyway
        : Showing.IsOrderKept(Tried, record, effect) is { } isKept ? (isKept ? DifferenceSort.Order : DifferenceSort.Next)
        : effect.Conclusion is Conclusion.Know know && !Tried.Of.At.Links.Asks($"{record.Binding.Part(know.Slot).Name}.{know.Fact.Name}") ? DifferenceSort.Unasked
        : DifferenceSort.Plain;
}
