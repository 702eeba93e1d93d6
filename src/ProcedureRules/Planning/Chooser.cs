using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Logic;

namespace ProcedureRules.Planning;

/// <summary>
/// Decides what is open: by rank, then by likely labour of the whole job, then by its upper end, then in pack order. Complete sets of choices
/// come lazily, the best first: a rank is gone into only when every way of a lower one has failed.
/// </summary>
internal sealed class Chooser(ChoiceBook book, PlannerOptions options, CancellationToken cancellation)
{
    private int _left = options.MostHypotheses;

    /// <summary>Complete sets of choices, the best first; unusable ones are among them, with their faults.</summary>
    public IEnumerable<Decision> From(BeliefState beliefs) => Decide(beliefs, [], []);

    private IEnumerable<Decision> Decide(BeliefState beliefs, IReadOnlyList<(ChoiceKey, int)> taken, IReadOnlyList<ChoiceKey> undecided)
    {
        cancellation.ThrowIfCancellationRequested();
        var key = Next(beliefs, undecided);
        if (key is null)
        {
            yield return new Decision(beliefs, taken, undecided, Cost.Under(beliefs), [.. Faults.Of(beliefs), .. undecided.Select(open => NoWayLeft(beliefs, open)).OfType<Fault>()]);
            yield break;
        }
        var binding = (key as ChoiceKey.OfRule)?.Binding;
        var open = book.Options(key).Where(option => option.IsOpen(beliefs, binding) == Truth.Yes).ToList();
        var count = 0;
        foreach (var rank in open.GroupBy(option => option.Rank).OrderBy(group => group.Key))
        {
            var ways = rank.AsEnumerable();
            if (_left <= 0) ways = ways.Take(1);
            var branches = ways.Select(option => Decide(Take(beliefs, key, option.Index), [.. taken, (key, option.Index)], undecided)).ToList();
            foreach (var decision in Merge(branches))
            {
                count += decision.Faults.Count == 0 ? 1 : 0;
                yield return decision;
            }
        }

        // A choice that only some moment of the plan would open need not be made; one without any open way waits for an answer.
        var mayStay = beliefs.Required(new Atom.Open(key)) < Assurance.Provisional || open.Count == 0;
        if (count == 0 && mayStay)
            foreach (var decision in Decide(beliefs, taken, [.. undecided, key])) yield return decision;
    }

    // A required choice none of whose ways is open, nor can turn out to be.
    private Fault? NoWayLeft(BeliefState beliefs, ChoiceKey key)
    {
        var open = new Atom.Open(key);
        var level = beliefs.Required(open);
        var binding = (key as ChoiceKey.OfRule)?.Binding;
        if (level < Assurance.Provisional || book.Options(key).Any(option => option.IsOpen(beliefs, binding) != Truth.No)) return null;
        var source = beliefs.Network.RecordsSupporting(open)[0];
        return new Fault(new Wording($"no way is left for {Words.Choice(key)}"), level >= Assurance.Protective, source.Record, open);
    }

    // What is required is decided before what a moment may ask for.
    private ChoiceKey? Next(BeliefState beliefs, IReadOnlyList<ChoiceKey> undecided)
    {
        ChoiceKey? drawn = null;
        foreach (var key in book.Keys)
        {
            if (beliefs.Taken(key) is not null || undecided.Contains(key)) continue;
            var open = new Atom.Open(key);
            if (beliefs.Required(open) >= Assurance.Provisional) return key;
            if (drawn is null && beliefs.Available(open) >= Assurance.Provisional) drawn = key;
        }
        return drawn;
    }

    private BeliefState Take(BeliefState beliefs, ChoiceKey key, int option)
    {
        _left--;
        return beliefs.With([new Supposition.Takes(key, option)]);
    }

    // The cheapest head first; inside a branch its own order stands, since it follows ranks further down.
    private static IEnumerable<Decision> Merge(List<IEnumerable<Decision>> branches)
    {
        if (branches.Count == 1)
        {
            foreach (var decision in branches[0]) yield return decision;
            yield break;
        }
        var heads = branches.Select(branch => branch.GetEnumerator()).ToList();
        heads.RemoveAll(head => !head.MoveNext());
        while (heads.Count > 0)
        {
            var best = heads[0];
            foreach (var head in heads.Skip(1))
                if (IsBetter(head.Current, best.Current)) best = head;
            yield return best.Current;
            if (!best.MoveNext()) heads.Remove(best);
        }
    }

    private static bool IsBetter(Decision one, Decision other)
    {
        var usable = (one.Faults.Count == 0, other.Faults.Count == 0);
        return usable is (true, false) || (usable is not (false, true) && one.Cost.CompareTo(other.Cost) < 0);
    }
}
