namespace ProcedureRules.Quantities;

/// <summary>Finds the longest spelling of a unit at the start of a text.</summary>
internal static class UnitMatcher
{
    private static readonly Dictionary<char, (string Name, Unit Unit)[]> ByFirst = UnitTable.All
        .SelectMany(u => u.Names.Select(n => (Name: n, Unit: u)))
        .GroupBy(e => char.ToLowerInvariant(e.Name[0]))
        .ToDictionary(g => g.Key, g => g.OrderByDescending(e => e.Name.Length).ToArray());

    /// <summary>
    /// Takes the longest spelling; among equals the one in the right case. The case matters only for single letters
    /// (m is a metre, M is nothing). A space in a spelling stands for any run of spaces.
    /// </summary>
    public static bool TryMatch(ReadOnlySpan<char> text, string? prefix, out Unit? unit, out int length)
    {
        (unit, length) = (null, 0);
        if (text.IsEmpty || !ByFirst.TryGetValue(char.ToLowerInvariant(text[0]), out var candidates)) return false;
        var exact = false;
        foreach (var (name, candidate) in candidates)
        {
            if (candidate.Prefix != prefix) continue;
            var taken = Match(text, name, out var sameCase);
            if (taken < length || taken == 0 || (taken == length && (exact || !sameCase))) continue;
            (unit, length, exact) = (candidate, taken, sameCase);
        }

        return unit is not null;
    }

    private static int Match(ReadOnlySpan<char> text, string name, out bool sameCase)
    {
        sameCase = true;
        var at = 0;
        foreach (var expected in name)
        {
            if (at >= text.Length) return 0;
            if (expected == ' ')
            {
                if (!char.IsWhiteSpace(text[at])) return 0;
                while (at < text.Length && char.IsWhiteSpace(text[at])) at++;
                continue;
            }

            var found = text[at++];
            if (found == expected) continue;
            if (name.Length == 1 || char.ToLowerInvariant(found) != char.ToLowerInvariant(expected)) return 0;
            sameCase = false;
        }

        var endsInWord = char.IsLetterOrDigit(name[^1]);
        return endsInWord && GoesOn(text, at) ? 0 : at;
    }

    // N.n is one misspelt word, not newtons and a rest.
    private static bool GoesOn(ReadOnlySpan<char> text, int at)
    {
        if (at >= text.Length) return false;
        return char.IsLetterOrDigit(text[at]) || text[at] == '_'
            || (text[at] == '.' && at + 1 < text.Length && char.IsLetter(text[at + 1]));
    }
}
