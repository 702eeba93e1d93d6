namespace ProcedureRules.Explaining;

/// <summary>What two sequences without repetition have in common in the same order, as much as possible: the longest rising run of the places.</summary>
internal static class CommonOrder
{
    public static HashSet<string> Of(IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        var places = before.Select((item, i) => (item, i)).ToDictionary(entry => entry.item, entry => entry.i);
        var common = after.Where(places.ContainsKey).Select(item => places[item]).ToList();

        // ends[n]: where the run of n + 1 items that ends lowest ends; previous links each item to the one before it in its run.
        var ends = new List<int>();
        var previous = new int[common.Count];
        for (var i = 0; i < common.Count; i++)
        {
            var length = ends.BinarySearch(i, Comparer<int>.Create((a, b) => common[a].CompareTo(common[b])));
            if (length < 0) length = ~length;
            previous[i] = length > 0 ? ends[length - 1] : -1;
            if (length == ends.Count) ends.Add(i);
            else ends[length] = i;
        }

        var kept = new HashSet<string>(StringComparer.Ordinal);
        for (var i = ends.Count > 0 ? ends[^1] : -1; i >= 0; i = previous[i]) kept.Add(before[common[i]]);
        return kept;
    }
}
