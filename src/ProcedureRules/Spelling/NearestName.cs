namespace ProcedureRules.Spelling;

/// <summary>Finds the name a misspelt one was likely meant to be.</summary>
internal static class NearestName
{
    private const int LongestName = 160;
    private const int ShortestWord = 4;

    /// <summary>The nearest candidate, or null if none is near enough; ties go to the first in ordinal order.</summary>
    /// <remarks>
    /// Case, hyphens, underscores and spaces do not count: whoever writes <c>oil-pan</c> means <c>oil_pan</c>. Where no slip of the pen explains a
    /// name, a word too many or too few may: <c>belt</c> for <c>drive_belt</c>.
    /// </remarks>
    public static string? Find(string wrong, IEnumerable<string> candidates)
    {
        if (wrong.Length > LongestName)
            return null;

        var plain = Plain(wrong);
        string? best = null;
        var bestDistance = Allowed(plain.Length) + 1;
        foreach (var candidate in candidates)
        {
            if (candidate == wrong || candidate.Length > LongestName)
                continue;

            var distance = Distance(plain, Plain(candidate));
            var tie = distance == bestDistance && best is not null && string.CompareOrdinal(candidate, best) < 0;
            if (distance < bestDistance || tie)
                (best, bestDistance) = (candidate, distance);
        }

        return best ?? OfTheSameWords(wrong, candidates);
    }

    // Of those with the same last word first: a drive belt is a belt, a belt cover is a cover.
    private static string? OfTheSameWords(string wrong, IEnumerable<string> candidates)
    {
        var words = Words(wrong);
        return (from candidate in candidates.Order(StringComparer.Ordinal)
                where candidate != wrong && candidate.Length <= LongestName
                let others = Words(candidate)
                where words.Length > 0 && others.Length > 0 && (words.All(others.Contains) || others.All(words.Contains))
                orderby words[^1] == others[^1] ? 0 : 1, Math.Abs(others.Length - words.Length)
                select candidate).FirstOrDefault();
    }

    // Short words tell nothing, or the opposite: whoever writes "today" does not mean "not_today".
    private static string[] Words(string name)
    {
        var words = name.ToLowerInvariant().Split(['-', '_', ' '], StringSplitOptions.RemoveEmptyEntries);
        return Array.Exists(words, word => word.Length < ShortestWord) ? [] : words;
    }

    private static int Allowed(int length) => length switch { < 3 => 0, < 5 => 1, < 9 => 2, < 32 => 3, _ => length / 8 };

    private static string Plain(string name) =>
        string.Concat(name.Where(c => c is not ('-' or '_' or ' ')).Select(char.ToLowerInvariant));

    /// <summary>How many mistakes of typing lie between two words: insertions, deletions, substitutions and swaps of neighbours cost one each.</summary>
    public static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;

        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                d[i, j] = Math.Min(change, Math.Min(d[i - 1, j], d[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
