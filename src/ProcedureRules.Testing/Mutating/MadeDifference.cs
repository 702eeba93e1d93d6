using ProcedureRules.Inference;

namespace ProcedureRules.Testing.Mutating;

/// <summary>What a change makes come or go at a moment.</summary>
/// <param name="Tried">The moment.</param>
/// <param name="Effects">What comes or goes, each with the record that says it.</param>
/// <param name="IsOpen">Whether the rule is open there, with the change and without: what a condition of it hangs on is not known.</param>
internal sealed record MadeDifference(TriedStage Tried, IReadOnlyList<(Record Record, Effect Effect)> Effects, bool IsOpen)
{
    /// <summary>Whether the plan has the steps that it is about.</summary>
    public bool IsInPlan => Effects.Count == 0 || Effects.Any(said => Showing.IsInPlan(Tried, said.Record));

    /// <summary>What is known of how it shows: the likeliest of all that comes or goes.</summary>
    public DifferenceSort Sort => !IsInPlan ? DifferenceSort.Absent
        : IsOpen ? DifferenceSort.Open
        : Effects.Count == 0 ? DifferenceSort.Plain
        : Effects.Where(said => Showing.IsInPlan(Tried, said.Record)).Min(said => SortOf(said.Record, said.Effect));

    private DifferenceSort SortOf(Record record, Effect effect) =>
        Showing.Others(Tried, record, effect).Any() || (Showing.StateOf(record, effect) is { } state && Showing.IsSoAnyway(Tried, state)) ? DifferenceSort.Anyway
        : Showing.IsOrder(effect) ? DifferenceSort.Order
        : DifferenceSort.Plain;

    /// <summary>What comes or goes with a change that makes other records of a rule.</summary>
    public static MadeDifference Of(Candidate candidate)
    {
        var (effects, isOpen) = (new List<(Record, Effect)>(), true);
        for (var i = 0; i < candidate.Own.Count; i++)
        {
            var (before, after) = (candidate.Tried.Records[candidate.Tried.Of.Of[i]], candidate.Own[i]);
            if (ReferenceEquals(before, after)) continue;
            var (was, comes) = (candidate.Tried.Forms.Forms[i], candidate.Forms.Forms[i]);
            isOpen &= was.Equals(comes) || !(was.IsSettled || comes.IsSettled);
            IReadOnlyList<Effect> old = was.IsOff ? [] : before.Effects, now = comes.IsOff ? [] : after.Effects;
            effects.AddRange(old.Except(now).Select(effect => (before, effect)).Concat(now.Except(old).Select(effect => (after, effect))));
        }

        return new MadeDifference(candidate.Tried, effects, isOpen);
    }

    /// <summary>What comes with records that a changed rule makes beside those that it made before.</summary>
    public static MadeDifference Of(TriedStage tried, IEnumerable<Record> more) =>
        new(tried, [.. more.SelectMany(record => record.Effects.Select(effect => (record, effect)))], IsOpen: false);
}
