using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Inference;
using ProcedureRules.Logic;

namespace ProcedureRules.Tests.Choosing;

/// <summary>The best set of choices by trying every one: no bound, no order of deciding.</summary>
internal static class EveryChoice
{
    /// <summary>The key of the best set; null where none can be used.</summary>
    public static string? Best(BeliefState beliefs, ChoiceBook book)
    {
        var best = Enumerate(beliefs, book, 0).Where(there => IsUsable(there, book)).Select(there => Key(there, book)).ToList();
        best.Sort(Compare);
        return best.Count == 0 ? null : Text(best[0]);
    }

    /// <summary>What a set of choices is compared by.</summary>
    public static string KeyOf(BeliefState beliefs, ChoiceBook book) => Text(Key(beliefs, book));

    private static IEnumerable<BeliefState> Enumerate(BeliefState beliefs, ChoiceBook book, int choice)
    {
        if (choice == book.Keys.Count) return [beliefs];
        var key = book.Keys[choice];
        return book.Options(key).Select(option => beliefs.With([new Supposition.Takes(key, option.Index)])).Prepend(beliefs)
            .SelectMany(there => Enumerate(there, book, choice + 1));
    }

    private static bool IsUsable(BeliefState beliefs, ChoiceBook book)
    {
        foreach (var key in book.Keys)
        {
            var open = new Atom.Open(key);
            var truths = book.Options(key).Select(option => option.IsOpen(beliefs, (key as ChoiceKey.OfRule)?.Binding)).ToList();
            var (isLive, isRequired) = (beliefs.Available(open) >= Assurance.Provisional, beliefs.Required(open) >= Assurance.Provisional);
            if (beliefs.Taken(key) is { } way)
            {
                if (!isLive || truths[way] != Truth.Yes) return false;
            }
            else if (isRequired && (truths.Contains(Truth.Yes) || truths.TrueForAll(truth => truth == Truth.No)))
            {
                return false;
            }
        }

        return Faults.Of(beliefs).Count == 0;
    }

    private static (int Waiting, List<int> Ranks, long Twice, long Most, List<int> Ways) Key(BeliefState beliefs, ChoiceBook book)
    {
        var cost = Cost.Under(beliefs);
        var required = book.Keys.Select(key => beliefs.Required(new Atom.Open(key)) >= Assurance.Provisional).ToList();
        var ways = book.Keys.Select((key, i) => required[i] ? beliefs.Taken(key) ?? -1 : -1).ToList();
        var ranks = book.Keys.Where((_, i) => ways[i] >= 0).Select(key => book.Options(key)[beliefs.Taken(key)!.Value].Rank - book.Options(key).Min(option => option.Rank));
        return (required.Where((isRequired, i) => isRequired && ways[i] < 0).Count(), [.. ranks.Where(rank => rank > 0).OrderDescending()], cost.Twice, cost.Most, ways);
    }

    private static int Compare((int Waiting, List<int> Ranks, long Twice, long Most, List<int> Ways) one, (int Waiting, List<int> Ranks, long Twice, long Most, List<int> Ways) other)
    {
        if (one.Waiting != other.Waiting) return one.Waiting.CompareTo(other.Waiting);
        for (var i = 0; i < Math.Max(one.Ranks.Count, other.Ranks.Count); i++)
            if (one.Ranks.ElementAtOrDefault(i).CompareTo(other.Ranks.ElementAtOrDefault(i)) is var ranks and not 0) return ranks;
        if ((one.Twice, one.Most).CompareTo((other.Twice, other.Most)) is var labour and not 0) return labour;
        for (var i = 0; i < one.Ways.Count; i++)
            if (one.Ways[i] != other.Ways[i]) return one.Ways[i].CompareTo(other.Ways[i]);
        return 0;
    }

    private static string Text((int Waiting, List<int> Ranks, long Twice, long Most, List<int> Ways) key) =>
        $"{key.Waiting} waiting, [{string.Join(' ', key.Ranks)}] down, {key.Twice} twice, {key.Most} most, ways {string.Join(' ', key.Ways)}";
}
