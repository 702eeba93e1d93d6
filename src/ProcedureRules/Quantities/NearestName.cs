namespace ProcedureRules.Quantities;

/// <summary>Finds the name that a misspelt word was probably meant to be.</summary>
internal static class NearestName
{
    private const int LongestWord = 40;

    /// <summary>The name at the least distance, the first of equals; null if none is within a third of the word (at least one slip).</summary>
    public static string? Of(string word, IEnumerable<string> names)
    {
        if (word.Length is 0 or > LongestWord) return null;
        var (best, least) = ((string?)null, Math.Max(1, word.Length / 3) + 1);
        foreach (var name in names)
        {
            // A single letter that is one slip away from everything explains nothing.
            if (Math.Abs(name.Length - word.Length) >= least || (name.Length == 1 && word.Length > 1)) continue;
            var distance = Distance(word, name);
            if (distance >= least || distance >= name.Length) continue;
            (best, least) = (name, distance);
        }

        return best;
    }

    // Insertions, deletions, replacements and swaps of neighbours, ignoring case (optimal string alignment).
    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = Same(a[i - 1], b[j - 1]) ? 0 : 1;
                var least = Math.Min(Math.Min(rows[i - 1, j] + 1, rows[i, j - 1] + 1), rows[i - 1, j - 1] + cost);
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1])) least = Math.Min(least, rows[i - 2, j - 2] + 1);
                rows[i, j] = least;
            }
        }

        return rows[a.Length, b.Length];
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
